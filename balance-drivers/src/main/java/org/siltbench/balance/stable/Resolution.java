package org.siltbench.balance.stable;

import org.siltbench.balance.Reading;

/** Learns the balance's division from the digits it shows. */
final class Resolution {

  private long step;
  private final long given;

  Resolution(long given) {
    this.given = given;
    this.step = given;
  }

  /** Takes a mass; true if the number of places shown has changed. */
  boolean changedBy(Reading reading, long nanograms) {
    long shown = place(reading.digits(), nanograms);
    if (given > 0 || shown == 0 || shown == step) {
      return false;
    }
    boolean changed = step != 0;
    step = shown;
    return changed;
  }

  /** Nanograms in one division; 0 while nothing but zero was shown. */
  long nanograms() {
    return step;
  }

  /** The worth of the last digit: the mass over the digits read as a whole number. */
  private static long place(String digits, long nanograms) {
    long whole = 0;
    for (int i = 0; i < digits.length(); i++) {
      char c = digits.charAt(i);
      if (c >= '0' && c <= '9' && whole < Long.MAX_VALUE / 20) {
        whole = whole * 10 + (c - '0');
      }
    }
    return whole == 0 ? 0 : Math.abs(nanograms) / whole;
  }
}
