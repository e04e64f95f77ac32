package org.siltbench.calc.id;

/**
 * The 28 characters of identities: digits and the capitals that common keyboard layouts do not move
 * and that a reader does not take for a digit; not A Q W Z Y M (moved) and not I O (look like 1 0).
 */
public final class Alphabet {

  /** The characters in order of value, 0 to 27. */
  public static final String CHARACTERS = "0123456789BCDEFGHJKLNPRSTUVX";

  /** How many characters there are. */
  public static final int SIZE = CHARACTERS.length();

  private Alphabet() {}

  /** True for a character of the alphabet; lower case is not. */
  public static boolean contains(char c) {
    return CHARACTERS.indexOf(c) >= 0;
  }

  /** The character of a value from 0 to 27; other values throw IndexOutOfBoundsException. */
  public static char at(int value) {
    return CHARACTERS.charAt(value);
  }

  /** The value of a character, 0 to 27, or -1 for one outside the alphabet. */
  public static int valueOf(char c) {
    return CHARACTERS.indexOf(c);
  }

  /** True when every character belongs to the alphabet; true for the empty text. */
  public static boolean covers(String text) {
    return text.chars().allMatch(c -> CHARACTERS.indexOf(c) >= 0);
  }

  /** A number as exactly {@code length} characters, most significant first. */
  static String encode(int number, int length) {
    char[] out = new char[length];
    int rest = number;
    for (int i = length - 1; i >= 0; i--) {
      out[i] = at(rest % SIZE);
      rest /= SIZE;
    }
    return new String(out);
  }

  /** The number that {@link #encode} wrote. */
  static int decode(String text) {
    return text.chars().reduce(0, (sum, c) -> sum * SIZE + valueOf((char) c));
  }
}
