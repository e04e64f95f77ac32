package org.siltbench.calc.id;

import java.util.random.RandomGenerator;

/**
 * The four characters that tell one bench from all others. The first is a letter: so no identity is
 * ever taken for a number (a spreadsheet eats leading zeros and reads 12E4 as 120000).
 *
 * @param text four characters of the alphabet, the first a letter
 */
public record BenchCode(String text) {

  /** Characters in a bench code. */
  public static final int LENGTH = 4;

  private static final int DIGITS = 10;

  /**
   * @throws IllegalArgumentException if the text is no bench code
   */
  public BenchCode {
    if (text.length() != LENGTH
        || !Alphabet.covers(text)
        || Alphabet.valueOf(text.charAt(0)) < DIGITS) {
      throw new IllegalArgumentException(
          "not a bench code (a letter and three characters of "
              + Alphabet.CHARACTERS
              + "): "
              + text);
    }
  }

  /**
   * Draws a code; 395,136 are possible, so a clash is possible too and is looked for on joining.
   */
  static BenchCode random(RandomGenerator random) {
    StringBuilder text = new StringBuilder(LENGTH);
    text.append(Alphabet.at(random.nextInt(DIGITS, Alphabet.SIZE)));
    while (text.length() < LENGTH) {
      text.append(Alphabet.at(random.nextInt(Alphabet.SIZE)));
    }
    return new BenchCode(text.toString());
  }

  @Override
  public String toString() {
    return text;
  }
}
