package org.siltbench.calc.id;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** Every wrong character and every exchange of two characters is found, without exception. */
final class ErrorsAreCaughtProperties {

  private static final String TYPEABLE = typeable();

  private static String typeable() {
    StringBuilder all = new StringBuilder();
    for (char c = '!'; c <= '~'; c++) {
      all.append(c);
    }
    return all.append("àéèç§").toString();
  }

  private static List<String> codes(long seed) {
    Random random = new Random(seed);
    BenchCode bench = BenchCode.random(random);
    List<FilterId> ids = BatchCode.of(bench, 1 + random.nextInt(783)).filters().toList();
    FilterId id = ids.get(random.nextInt(ids.size()));
    String grams = "0." + String.format(Locale.ROOT, "%06d", random.nextInt(1_000_000));
    String bag =
        new BagCode(id, grams.substring(0, 5 + random.nextInt(4)), 1 + random.nextInt(27)).text();
    return List.of(id.text(), bag);
  }

  @Property(tries = 60)
  void every_single_substitution_is_found(@ForAll long seed) {
    for (String code : codes(seed)) {
      Scan good = Scan.of(code);
      for (int i = 0; i < code.length(); i++) {
        for (char c : TYPEABLE.toCharArray()) {
          Scan other = Scan.of(code.substring(0, i) + c + code.substring(i + 1));
          boolean same = other.equals(good);
          assertFalse(other.filterOrNull() != null && !same, code + " at " + i + " " + c);
          if (Alphabet.contains(Character.toUpperCase(c))
              && Character.toUpperCase(c) != code.charAt(i)) {
            assertFalse(same, code + " at " + i + " " + c);
          }
        }
      }
    }
  }

  @Property(tries = 300)
  void every_exchange_of_any_two_characters_is_found(@ForAll long seed) {
    for (String code : codes(seed)) {
      for (int i = 0; i < code.length(); i++) {
        for (int j = 0; j < i; j++) {
          if (code.charAt(i) != code.charAt(j)) {
            StringBuilder turned = new StringBuilder(code);
            turned.setCharAt(i, code.charAt(j));
            turned.setCharAt(j, code.charAt(i));
            assertEquals(null, Scan.of(turned.toString()).filterOrNull(), code + " " + i + " " + j);
          }
        }
      }
    }
  }

  @Test
  void all_substitutions_and_exchanges_over_a_whole_batch_are_found() {
    for (FilterId id : BatchCode.of(new BenchCode("T0P5"), 28).filters().toList()) {
      char[] text = id.text().toCharArray();
      for (int i = 0; i < text.length; i++) {
        char old = text[i];
        for (int v = 0; v < Alphabet.SIZE; v++) {
          text[i] = Alphabet.at(v);
          assertEquals(text[i] == old, CheckCharacter.MOD_37_2.holds(new String(text)));
        }
        text[i] = old;
      }
    }
  }

  @Property
  void nothing_entered_makes_the_reader_throw(@ForAll @StringLength(max = 40) String entered) {
    Scan scan = Scan.of(entered);
    assertNotEquals(null, scan.message());
  }

  @Property
  void any_text_of_the_alphabet_is_answered(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 30) int length) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append(Alphabet.at(random.nextInt(Alphabet.SIZE)));
    }
    Scan scan = Scan.of(text.toString());
    assertEquals(
        scan.filterOrNull() != null, scan instanceof Scan.Bare || scan instanceof Scan.Bag);
  }
}
