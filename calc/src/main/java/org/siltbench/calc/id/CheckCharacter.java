package org.siltbench.calc.id;

/**
 * The two alphanumeric check-character systems of ISO/IEC 7064:2003 with one check character.
 *
 * <p>MOD 37-2 (pure system, clause 7): with character values 0-9 = 0-9, A-Z = 10-35 and the check
 * character * = 36, the string a(n)…a(1) with its check a(1) satisfies Σ a(i)·2^(i-1) ≡ 1 (mod 37).
 * Since 2 has order 36 modulo 37, every substitution of one character and every exchange of two
 * characters up to 35 places apart is found.
 *
 * <p>MOD 37,36 (hybrid system, clause 8): starting from P = 36, each character a gives S = (P + a)
 * mod 36 with 0 read as 36, and P = 2·S mod 37; the check brings the last S to 1. It stays within
 * letters and digits, but misses some exchanges: it is here to read foreign numbers.
 *
 * <p>Texts are upper-case letters and digits; any other character throws IllegalArgumentException.
 * The empty text is refused too.
 */
public enum CheckCharacter {
  /** MOD 37-2: one of 0-9, A-Z, *. */
  MOD_37_2 {
    @Override
    public char of(String text) {
      int sum = 0;
      for (int i = 0; i < required(text); i++) {
        sum = (sum + value(text.charAt(i), 35)) * 2 % 37;
      }
      return VALUES.charAt((38 - sum) % 37);
    }

    @Override
    public boolean holds(String checked) {
      int last = required(checked) - 1;
      int sum = 0;
      for (int i = 0; i < last; i++) {
        sum = (sum + value(checked.charAt(i), 35)) * 2 % 37;
      }
      return last > 0 && (sum + value(checked.charAt(last), 36)) % 37 == 1;
    }
  },

  /** MOD 37,36: one of 0-9, A-Z. */
  MOD_37_36 {
    @Override
    public char of(String text) {
      return VALUES.charAt((37 - carry(text, required(text))) % 36);
    }

    @Override
    public boolean holds(String checked) {
      int last = required(checked) - 1;
      return last > 0 && (carry(checked, last) + value(checked.charAt(last), 35)) % 36 == 1;
    }

    private int carry(String text, int length) {
      int p = 36;
      for (int i = 0; i < length; i++) {
        int s = (p + value(text.charAt(i), 35)) % 36;
        p = 2 * (s == 0 ? 36 : s) % 37;
      }
      return p;
    }
  };

  private static final String VALUES = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";

  /**
   * The check character to append to a text.
   *
   * @throws IllegalArgumentException for an empty text or a character that is no capital or digit
   */
  public abstract char of(String text);

  /**
   * True when a text that ends in its check character is right.
   *
   * @return false for a single character, which carries nothing
   * @throws IllegalArgumentException for an empty text or a character outside the system
   */
  public abstract boolean holds(String checked);

  static int required(String text) {
    if (text.isEmpty()) {
      throw new IllegalArgumentException("no characters to check");
    }
    return text.length();
  }

  static int value(char c, int max) {
    int value = VALUES.indexOf(c);
    if (value < 0 || value > max) {
      throw new IllegalArgumentException("not a character of the check system: '" + c + "'");
    }
    return value;
  }
}
