package org.siltbench.calc.id;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class CheckCharacterTest {

  // ISO/IEC 7064:2003, MOD 37-2 as printed for ISBT 128 donation numbers (A9999 17 123456 -> 9,
  // check
  // T in ISO 7064 for 079).
  @ParameterizedTest
  @CsvSource({"A999917123456, 9", "079, T"})
  void mod_37_2_gives_the_published_characters(String text, char check) {
    assertEquals(check, CheckCharacter.MOD_37_2.of(text));
    assertTrue(CheckCharacter.MOD_37_2.holds(text + check));
  }

  // ISO/IEC 7064:2003, MOD 37,36, published examples.
  @ParameterizedTest
  @CsvSource({"A12425GABC1234002, M", "B159D8FA01240000, K"})
  void mod_37_36_gives_the_published_characters(String text, char check) {
    assertEquals(check, CheckCharacter.MOD_37_36.of(text));
    assertTrue(CheckCharacter.MOD_37_36.holds(text + check));
  }

  @Test
  void mod_37_2_agrees_with_the_definition_as_a_weighted_sum() {
    String values = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
    for (String text : new String[] {"0", "Z", "K3DF0712", "ZZZZZZZZ", "10", "A1B2C3"}) {
      String checked = text + CheckCharacter.MOD_37_2.of(text);
      int sum = 0;
      for (int i = 0; i < checked.length(); i++) {
        int weight = (int) Math.pow(2, checked.length() - 1 - i);
        sum += values.indexOf(checked.charAt(i)) * weight;
      }
      assertEquals(1, sum % 37, text);
    }
  }

  @Test
  void mod_37_36_misses_an_exchange_that_mod_37_2_finds() {
    int missed = 0;
    for (int a = 0; a < 36; a++) {
      for (int b = 0; b < a; b++) {
        String text = "" + digit(a) + digit(b);
        String turned = "" + digit(b) + digit(a);
        if (CheckCharacter.MOD_37_36.of(text) == CheckCharacter.MOD_37_36.of(turned)) {
          missed++;
        }
        assertFalse(CheckCharacter.MOD_37_2.of(text) == CheckCharacter.MOD_37_2.of(turned));
      }
    }
    assertTrue(missed > 0);
  }

  private static char digit(int value) {
    return Character.toUpperCase(Character.forDigit(value, 36));
  }

  @ParameterizedTest
  @EnumSource
  void the_empty_text_and_foreign_characters_are_refused(CheckCharacter system) {
    assertThrows(IllegalArgumentException.class, () -> system.of(""));
    assertThrows(IllegalArgumentException.class, () -> system.holds(""));
    assertThrows(IllegalArgumentException.class, () -> system.of("a"));
    assertThrows(IllegalArgumentException.class, () -> system.of("1*"));
    assertThrows(IllegalArgumentException.class, () -> system.holds("*1"));
    assertThrows(IllegalArgumentException.class, () -> system.holds("1-"));
    assertFalse(system.holds("1"));
  }

  @Test
  void the_star_is_a_check_of_mod_37_2_only() {
    String text = "";
    for (int i = 0; i < 36; i++) {
      if (CheckCharacter.MOD_37_2.of("" + digit(i)) == '*') {
        text = "" + digit(i);
      }
    }
    assertTrue(CheckCharacter.MOD_37_2.holds(text + "*"));
    String star = text + "*";
    assertThrows(IllegalArgumentException.class, () -> CheckCharacter.MOD_37_36.holds(star));
  }
}
