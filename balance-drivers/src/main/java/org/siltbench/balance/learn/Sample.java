package org.siltbench.balance.learn;

/**
 * Bytes captured in one situation, one character a byte.
 *
 * @param situation what was done
 * @param text the bytes
 * @param startsOnLine true if the first character begins a line
 * @param pace when they came
 */
public record Sample(Situation situation, String text, boolean startsOnLine, Pace pace) {

  /** Bytes without times. */
  public Sample(Situation situation, String text, boolean startsOnLine) {
    this(situation, text, startsOnLine, Pace.UNKNOWN);
  }

  /** Bytes of a running stream, of which the first line may be half. */
  public static Sample of(Situation situation, String text) {
    return new Sample(situation, text, false);
  }
}
