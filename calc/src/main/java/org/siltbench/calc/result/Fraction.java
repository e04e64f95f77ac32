package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;

/**
 * The part of a sample that a sieve of 62 or 63 µm left apart; the words of the column {@code
 * part}.
 */
public enum Fraction {
  /** Sand on a filter. */
  SAND("sand"),
  /** Sand in a dish: no filter, so no filter blank is taken off. */
  SAND_IN_DISH("sand-in-dish"),
  /** What passed the sieve, on a filter. */
  FINES("fines");

  private final String word;

  Fraction(String word) {
    this.word = word;
  }

  /** The stable word. */
  public String word() {
    return word;
  }

  /** True for sand: its water is the fines' water, so it has no volume of its own. */
  public boolean isSand() {
    return this != FINES;
  }

  /** The fraction of a word; null for an unknown one. */
  public static @Nullable Fraction of(String word) {
    for (Fraction fraction : values()) {
      if (fraction.word.equalsIgnoreCase(word)) {
        return fraction;
      }
    }
    return null;
  }
}
