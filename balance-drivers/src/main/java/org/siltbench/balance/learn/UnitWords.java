package org.siltbench.balance.learn;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.format.MassUnit;

/** The ways units of mass are written. Words with two meanings are not among them. */
final class UnitWords {

  private static final Map<String, MassUnit> WORDS = words();

  private UnitWords() {}

  private static Map<String, MassUnit> words() {
    Map<String, MassUnit> out = new LinkedHashMap<>();
    put(out, MassUnit.GRAM, "g", "gm", "gram", "grams", "gramm");
    put(out, MassUnit.MILLIGRAM, "mg", "milligram", "milligrams");
    put(out, MassUnit.KILOGRAM, "kg", "kilogram", "kilograms");
    put(out, MassUnit.MICROGRAM, "ug", "mcg", "\u00b5g", "\u00c2\u00b5g", "microgram");
    put(out, MassUnit.CARAT, "ct", "carat");
    return out;
  }

  private static void put(Map<String, MassUnit> out, MassUnit unit, String... words) {
    for (String word : words) {
      out.put(word, unit);
    }
  }

  /** The unit a word stands for, or null. {@code Mg}, a tonne, is none. */
  static @Nullable MassUnit of(String word) {
    return word.equals("Mg") ? null : WORDS.get(word.toLowerCase(Locale.ROOT));
  }

  /** The length of the unit word at a place of the text, or 0. */
  static int at(String text, int from) {
    int end = from;
    while (end < text.length() && isUnitChar(text.charAt(end))) {
      end++;
    }
    return of(text.substring(from, end)) == null ? 0 : end - from;
  }

  static boolean isUnitChar(char c) {
    return Character.isLetter(c) || c == '\u00c2' || c == '\u00b5';
  }
}
