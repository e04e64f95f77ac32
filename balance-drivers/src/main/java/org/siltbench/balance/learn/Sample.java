package org.siltbench.balance.learn;

/**
 * Bytes captured in one situation, one character a byte.
 *
 * @param situation what was done
 * @param text the bytes
 * @param startsOnLine true if the first character begins a line
 */
public record Sample(Situation situation, String text, boolean startsOnLine) {

  /** Bytes of a running stream, of which the first line may be half. */
  public static Sample of(Situation situation, String text) {
    return new Sample(situation, text, false);
  }
}
