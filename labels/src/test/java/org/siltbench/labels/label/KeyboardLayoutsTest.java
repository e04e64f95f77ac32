package org.siltbench.labels.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.id.Scan;
import org.siltbench.labels.AlderFork;

/**
 * A scanner types keys of a US keyboard; the computer takes them for keys of its own layout. Each
 * row gives what the layout makes of the US keys {@code 1234567890} without shift and {@code
 * QWERTYUIOPASDFGHJKLZXCVBNM} with shift (national layouts as shipped by common systems; from
 * memory).
 */
class KeyboardLayoutsTest {

  private static final String DIGITS = "1234567890";
  private static final String LETTERS = "QWERTYUIOPASDFGHJKLZXCVBNM";

  private static final Map<String, String[]> LAYOUTS = new LinkedHashMap<>();

  static {
    LAYOUTS.put("US", new String[] {DIGITS, LETTERS});
    LAYOUTS.put("French", new String[] {"&é\"'(-è_çà", "AZERTYUIOPQSDFGHJKLWXCVBN?"});
    LAYOUTS.put("Belgian", new String[] {"&é\"'(§è!çà", "AZERTYUIOPQSDFGHJKLWXCVBN?"});
    LAYOUTS.put("German", new String[] {DIGITS, "QWERTZUIOPASDFGHJKLYXCVBNM"});
    LAYOUTS.put("Swiss", new String[] {DIGITS, "QWERTZUIOPASDFGHJKLYXCVBNM"});
    LAYOUTS.put("Turkish Q", new String[] {DIGITS, "QWERTYUIOPASDFGHJKLZXCVBNM"});
    LAYOUTS.put("Turkish F", new String[] {DIGITS, "FGĞIODRNHPUİEAÜTKMLJÖVCÇZS"});
    LAYOUTS.put("Spanish", new String[] {DIGITS, LETTERS});
    LAYOUTS.put("Italian", new String[] {DIGITS, LETTERS});
    LAYOUTS.put("Nordic", new String[] {DIGITS, LETTERS});
    LAYOUTS.put("Czech", new String[] {"+ěščřžýáíé", "QWERTZUIOPASDFGHJKLYXCVBNM"});
    LAYOUTS.put("Russian", new String[] {DIGITS, "ЙЦУКЕНГШЩЗФЫВАПРОЛДЯЧСМИТЬ"});
    LAYOUTS.put("Greek", new String[] {DIGITS, ":ΣΕΡΤΥΘΙΟΠΑΣΔΦΓΗΞΚΛΖΧΨΩΒΝΜ"});
    LAYOUTS.put("Dvorak", new String[] {DIGITS, "\"<>PYFGCRLAOEUIDHTN:QJKXBM"});
  }

  private static String typed(String keys, String[] layout) {
    StringBuilder out = new StringBuilder();
    for (char key : keys.toCharArray()) {
      int digit = DIGITS.indexOf(key);
      out.append(digit >= 0 ? layout[0].charAt(digit) : layout[1].charAt(LETTERS.indexOf(key)));
    }
    return out.toString();
  }

  /** Right, or known to be wrong: never another filter of this lab, never another mass. */
  @Property(tries = 400)
  void noLayoutTurnsOneBagIntoAnother(
      @ForAll @IntRange(min = 0, max = 499) int filter,
      @ForAll @IntRange(min = 10_000, max = 99_999) int mass,
      @ForAll @IntRange(min = 1, max = 27) int revision) {
    FilterId id = AlderFork.filters(500).get(filter);
    BagCode code = new BagCode(id, "0." + mass, revision);
    LAYOUTS.forEach(
        (name, layout) -> {
          Scan scan = Scan.of(typed(code.text(), layout));
          if (scan instanceof Scan.Bag bag) {
            assertTrue(code.equals(bag.code()) || isStranger(bag, id), name + ": " + scan);
          } else if (scan instanceof Scan.OtherLayout other) {
            assertTrue(
                other.repaired() == null || new Scan.Bag(code).equals(other.repaired()), name);
          } else {
            assertTrue(!(scan instanceof Scan.Bare), name + ": " + scan);
          }
        });
  }

  /**
   * A layout that exchanges letters for letters (Dvorak) passes two check characters about once in
   * 1400 times; the bench code moves too, so no bench here has issued that filter.
   */
  private static boolean isStranger(Scan.Bag bag, FilterId id) {
    return !bag.code().filter().batch().bench().equals(id.batch().bench());
  }

  @Property(tries = 200)
  void layoutsThatKeepOurCharactersGiveTheRightText(
      @ForAll @IntRange(min = 0, max = 499) int filter,
      @ForAll @IntRange(min = 10_000, max = 99_999) int mass) {
    BagCode code = new BagCode(AlderFork.filters(500).get(filter), "0." + mass, 1);
    for (String name :
        new String[] {"German", "Swiss", "Turkish Q", "Spanish", "Italian", "Nordic"}) {
      assertEquals(code.text(), typed(code.text(), LAYOUTS.get(name)), name);
    }
  }
}
