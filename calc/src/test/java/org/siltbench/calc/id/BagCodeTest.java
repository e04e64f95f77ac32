package org.siltbench.calc.id;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.siltbench.calc.quantity.Mass;

final class BagCodeTest {

  private static final FilterId ID = BatchCode.of(new BenchCode("K3DF"), 7).filters(30).get(29);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0.12874",
        "0.1287",
        "0.128740",
        "0.09876",
        "0.00000",
        "1.23456",
        "12",
        "0",
        "9999",
        "0.1234567",
        "0.10000",
        "0.00001",
        "21.4500",
        "1234.567891",
        "99.99999999"
      })
  void the_displayed_digits_come_back_as_they_were(String grams) {
    BagCode code = new BagCode(ID, grams, 1);
    String text = code.text();
    assertTrue(Alphabet.covers(text), text);
    assertTrue(text.startsWith(ID.text()), text);
    assertTrue(text.length() <= BagCode.MAX_LENGTH && text.length() >= BagCode.MIN_LENGTH, text);
    assertEquals(new Scan.Bag(code), Scan.of(text));
    assertEquals(Mass.ofGrams(grams), code.mass());
  }

  @Test
  void a_person_finds_the_digits_of_the_mass_in_the_text() {
    assertTrue(new BagCode(ID, "0.12874", 3).text().substring(10).contains("12874"));
    assertEquals(17, new BagCode(ID, "0.12874", 3).text().length());
  }

  @Test
  void leading_zeros_are_not_kept_for_they_are_not_displayed_digits() {
    assertEquals("0.5", new BagCode(ID, "000.5", 1).grams());
    assertEquals("0", new BagCode(ID, "0", 1).grams());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-0.1",
        "+0.1",
        ".5",
        "1.",
        "1e3",
        "0,5",
        "0.123456789",
        "10000",
        "12345.6",
        "123.12345678",
        "1.2.3",
        "12 g",
        "0000000000000000000000000000001"
      })
  void a_mass_that_does_not_fit_is_refused(String grams) {
    assertThrows(IllegalArgumentException.class, () -> new BagCode(ID, grams, 1));
  }

  @Test
  void the_revision_is_1_to_27() {
    for (int revision = 1; revision <= 27; revision++) {
      BagCode code = new BagCode(ID, "0.12874", revision);
      assertEquals(new Scan.Bag(code), Scan.of(code.text()));
    }
    assertThrows(IllegalArgumentException.class, () -> new BagCode(ID, "0.1", 0));
    assertThrows(IllegalArgumentException.class, () -> new BagCode(ID, "0.1", 28));
  }

  @Test
  void every_mass_from_nothing_to_a_gram_has_a_spelling_and_few_need_another_zero() {
    int longer = 0;
    for (int i = 0; i < 100_000; i++) {
      String grams = "0." + String.format("%05d", i);
      BagCode code = new BagCode(ID, grams, 1 + i % 27);
      int plain = 13 - 1 + String.valueOf(i).length();
      longer += code.text().length() - plain;
      assertEquals(new Scan.Bag(code), Scan.of(code.text()));
    }
    assertTrue(longer < 3000, "longer " + longer);
  }

  /**
   * All that decides whether a spelling exists are the two residues modulo 37 (of what stands
   * before and after the decimals character), the number of decimals and the number of digits: all
   * cases.
   */
  @Test
  void a_spelling_exists_for_every_case_there_can_be() {
    int worst = 0;
    for (int before = 0; before < 37; before++) {
      for (int after = 0; after < 37; after++) {
        for (int revision : List.of(1, 2, 10, 27)) {
          for (int decimals = 0; decimals < 9; decimals++) {
            for (int length = 1; length <= 10; length++) {
              worst = Math.max(worst, zerosNeeded(before, revision, decimals, length, after));
            }
          }
        }
      }
    }
    assertTrue(worst <= 2, "zeros needed: " + worst);
  }

  private static int zerosNeeded(int before, int revision, int decimals, int length, int after) {
    String values = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
    for (int zeros = 0; zeros < 20; zeros++) {
      for (int shift = decimals; shift < 28; shift += 9) {
        int head = before * 2 + values.indexOf(Alphabet.at(shift));
        int sum = head * 2 + values.indexOf(Alphabet.at(revision));
        for (int i = 0; i < zeros + length; i++) {
          sum = sum * 2 % 37;
        }
        int check = (38 - (sum + after) * 2 % 37) % 37;
        if (Alphabet.contains(values.charAt(check))) {
          return zeros;
        }
      }
    }
    return 20;
  }
}
