package org.siltbench.calc.id;

import org.jspecify.annotations.Nullable;

/**
 * Keyboard layouts that change what a scanner set to a US keyboard types: which character stands
 * for which key. Capitals come with the shift key held, digits without it.
 */
enum KeyboardLayout {
  FRENCH("French", "&é\"'(-è_çà", null),
  BELGIAN("Belgian", "&é\"'(§è!çà", null),
  CZECH("Czech or Slovak", "+ěščřžýáíé", null),
  RUSSIAN("Russian", "1234567890", "ИСВУАПРОЛДТЗКЫЕГМЧ"),
  GREEK("Greek", "1234567890", "ΒΨΔΕΦΓΗΞΚΛΝΠΡΣΤΘΩΧ");

  private static final String KEYS = "1234567890";
  private static final String LETTERS = "BCDEFGHJKLNPRSTUVX";

  private final String title;
  private final String digits;
  private final @Nullable String letters;

  KeyboardLayout(String title, String digits, @Nullable String letters) {
    this.title = title;
    this.digits = digits;
    this.letters = letters;
  }

  String title() {
    return title;
  }

  /** The keys that were pressed, in our alphabet; null when a character is on none of them. */
  @Nullable String pressed(String typed) {
    StringBuilder keys = new StringBuilder(typed.length());
    for (int i = 0; i < typed.length(); i++) {
      char key = pressed(typed.charAt(i));
      if (!Alphabet.contains(key)) {
        return null;
      }
      keys.append(key);
    }
    return keys.toString();
  }

  private char pressed(char typed) {
    char upper = Character.toUpperCase(typed);
    int letter = letters == null ? -1 : letters.indexOf(upper);
    if (letter >= 0) {
      return LETTERS.charAt(letter);
    }
    int digit = digits.indexOf(Character.toLowerCase(typed));
    return digit >= 0 ? KEYS.charAt(digit) : upper;
  }
}
