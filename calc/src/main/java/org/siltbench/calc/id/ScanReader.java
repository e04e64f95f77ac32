package org.siltbench.calc.id;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Understands what was scanned or typed. */
final class ScanReader {

  private static final int MAX_ENTRY = 80;

  private ScanReader() {}

  static Scan read(String entered) {
    String bare = entered.strip().replaceFirst("^\\][A-Za-z][0-9]", "");
    if (bare.isEmpty()) {
      return new Scan.Damaged(entered, "Nothing was entered.");
    }
    if (bare.length() > MAX_ENTRY) {
      return new Scan.Damaged(
          bare.substring(0, MAX_ENTRY) + "…", "This is far longer than a bag code.");
    }
    Scan direct = understand(entered, tidy(bare));
    if (direct instanceof Scan.Bare || direct instanceof Scan.Bag) {
      return direct;
    }
    Scan other = otherLayout(entered, bare.replaceAll("\\s", ""));
    return other == null ? direct : other;
  }

  /** Capitals, and the groups of a printed ID joined; elsewhere a hyphen may be a lost digit. */
  private static String tidy(String bare) {
    String joined = bare.replaceAll("[\\s\\p{Pd}]", "");
    String text = joined.length() == FilterId.LENGTH ? joined : bare;
    return text.toUpperCase(Locale.ROOT).replace('O', '0').replace('I', '1');
  }

  private static Scan understand(String entered, String text) {
    String strange =
        text.chars()
            .filter(c -> !Alphabet.contains((char) c))
            .limit(1)
            .mapToObj(Character::toString)
            .findFirst()
            .orElse("");
    if (!strange.isEmpty()) {
      return new Scan.Damaged(entered, "The character \"" + strange + "\" is in no bag code.");
    }
    if (text.length() == FilterId.LENGTH) {
      return bare(entered, text);
    }
    if (text.length() < BagCode.MIN_LENGTH || text.length() > BagCode.MAX_LENGTH) {
      return new Scan.Damaged(
          entered,
          "A filter ID has "
              + FilterId.LENGTH
              + " characters and a bag code "
              + BagCode.MIN_LENGTH
              + " to "
              + BagCode.MAX_LENGTH
              + "; this has "
              + text.length()
              + ".");
    }
    return bag(entered, text);
  }

  private static Scan bare(String entered, String text) {
    FilterId filter = filterIn(text);
    return filter == null
        ? new Scan.WrongCheck(entered, Scan.Which.FILTER_ID, null)
        : new Scan.Bare(filter);
  }

  private static Scan bag(String entered, String text) {
    FilterId filter = filterIn(text);
    boolean whole = CheckCharacter.MOD_37_2.holds(text);
    if (filter != null && whole) {
      return whole(entered, text);
    }
    if (filter != null) {
      return new Scan.WrongCheck(entered, Scan.Which.BAG_CODE, filter);
    }
    return new Scan.WrongCheck(entered, whole ? Scan.Which.FILTER_ID : Scan.Which.BOTH, null);
  }

  private static @Nullable FilterId filterIn(String text) {
    String id = text.substring(0, FilterId.LENGTH);
    boolean sound = CheckCharacter.MOD_37_2.holds(id) && Character.isLetter(id.charAt(0));
    return sound ? new FilterId(id) : null;
  }

  /** Both checks hold; a text that no writer of ours would have written is refused all the same. */
  private static Scan whole(String entered, String text) {
    BagCode code = BagCode.read(text);
    return code == null
        ? new Scan.Damaged(entered, "The mass in the code makes no sense.")
        : new Scan.Bag(code);
  }

  private static @Nullable Scan otherLayout(String entered, String typed) {
    boolean foreign = false;
    for (KeyboardLayout layout : KeyboardLayout.values()) {
      String pressed = layout.pressed(typed);
      if (pressed != null && !pressed.equalsIgnoreCase(typed)) {
        Scan repaired = understand(entered, pressed);
        if (repaired.filterOrNull() != null) {
          return new Scan.OtherLayout(entered, layout.title(), repaired);
        }
      }
    }
    for (int i = 0; i < typed.length(); i++) {
      foreign |= typed.charAt(i) > 127 || "&\"'(_!+".indexOf(typed.charAt(i)) >= 0;
    }
    return foreign ? new Scan.OtherLayout(entered, "unknown", null) : null;
  }
}
