package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.List;

/**
 * A word or a single separator of the text around the number.
 *
 * @param text the characters
 * @param separator true for one of {@code , ; : | /} or a control character
 * @param blanks how many blanks stand before it
 */
record Atom(String text, boolean separator, int blanks) {

  private static final String SEPARATORS = ",;:|/";

  /** Cuts a text into atoms. */
  static List<Atom> in(String text) {
    List<Atom> out = new ArrayList<>();
    int blanks = 0;
    int at = 0;
    while (at < text.length()) {
      if (isBlank(text.charAt(at))) {
        blanks++;
        at++;
        continue;
      }
      int end = isSeparator(text.charAt(at)) ? at + 1 : wordEnd(text, at);
      out.add(new Atom(text.substring(at, end), isSeparator(text.charAt(at)), blanks));
      blanks = 0;
      at = end;
    }
    return out;
  }

  private static int wordEnd(String text, int from) {
    int at = from;
    while (at < text.length() && !isBlank(text.charAt(at)) && !isSeparator(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t';
  }

  private static boolean isSeparator(char c) {
    return SEPARATORS.indexOf(c) >= 0 || c < ' ';
  }

  /** How many blanks a text ends with. */
  static int trailingBlanks(String text) {
    return text.length() - text.replaceAll("[ \t]+$", "").length();
  }

  /** What kind of atom it is, to compare lines by: the separator itself, or a word. */
  String kind() {
    return separator ? text : "w";
  }
}
