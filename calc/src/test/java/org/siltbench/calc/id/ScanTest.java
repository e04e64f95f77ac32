package org.siltbench.calc.id;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ScanTest {

  private static final FilterId ID = BatchCode.of(new BenchCode("K3DF"), 7).filters(30).get(29);
  private static final BagCode BAG = new BagCode(ID, "0.12874", 1);

  @Test
  void case_blanks_hyphens_and_a_reader_prefix_do_not_matter() {
    for (String entered :
        List.of(
            ID.text(),
            ID.text().toLowerCase(Locale.ROOT),
            "  " + ID.grouped() + "\r\n",
            ID.grouped().replace('-', ' '),
            ID.grouped().replace('-', '\u2013'),
            "]d2" + ID.text(),
            "\t" + ID.text())) {
      assertEquals(new Scan.Bare(ID), Scan.of(entered), entered);
      assertEquals("", Scan.of(entered).message());
      assertEquals(ID, Scan.of(entered).filterOrNull());
    }
    assertEquals(new Scan.Bag(BAG), Scan.of(" " + BAG.text().toLowerCase(Locale.ROOT) + "\n"));
    assertEquals(ID, Scan.of(BAG.text()).filterOrNull());
  }

  @Test
  void letters_o_and_i_typed_for_the_digits_are_read_as_meant() {
    assertEquals(new Scan.Bare(ID), Scan.of(ID.text().replace('0', 'O').replace('1', 'i')));
  }

  @Test
  void a_hyphen_within_a_whole_code_is_not_skipped_for_it_may_stand_for_a_lost_digit() {
    String text = BAG.text();
    String broken = text.substring(0, 12) + "-" + text.substring(13);
    assertNull(Scan.of(broken).filterOrNull());
    assertInstanceOf(Scan.Damaged.class, Scan.of(text.substring(0, 9) + " " + text.substring(9)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "  ", "K3", "K3DF07", "K3DF071234", "*********", "hello", "]d2", "K3DF07#12"})
  void what_is_no_identity_is_damaged_and_says_why(String entered) {
    Scan scan = Scan.of(entered);
    Scan.Damaged damaged = assertInstanceOf(Scan.Damaged.class, scan);
    assertFalse(damaged.why().isBlank());
    assertTrue(scan.message().contains("type the ID"), scan.message());
    assertNull(scan.filterOrNull());
  }

  @Test
  void an_endless_entry_is_damaged_and_not_repeated_in_full() {
    Scan.Damaged damaged = assertInstanceOf(Scan.Damaged.class, Scan.of("B".repeat(100_000)));
    assertEquals(81, damaged.entered().length());
    assertEquals(
        "B".repeat(80), assertInstanceOf(Scan.Damaged.class, Scan.of("B".repeat(80))).entered());
    assertInstanceOf(Scan.Damaged.class, Scan.of("B".repeat(25)));
    assertInstanceOf(Scan.Damaged.class, Scan.of("B".repeat(12)));
    assertInstanceOf(Scan.WrongCheck.class, Scan.of("B".repeat(24)));
    assertInstanceOf(Scan.WrongCheck.class, Scan.of("C".repeat(13)));
  }

  @Test
  void the_outcome_says_which_check_does_not_hold() {
    String text = BAG.text();
    Scan.WrongCheck mass =
        assertInstanceOf(Scan.WrongCheck.class, Scan.of(text.replace("12874", "12875")));
    assertEquals(Scan.Which.BAG_CODE, mass.which());
    assertEquals(ID, mass.filter());
    assertTrue(mass.message().contains(ID.grouped()), mass.message());
    Scan.WrongCheck id = assertInstanceOf(Scan.WrongCheck.class, Scan.of("L" + text.substring(1)));
    assertEquals(Scan.Which.BOTH, id.which());
    assertNull(id.filter());
    Scan.WrongCheck bare =
        assertInstanceOf(Scan.WrongCheck.class, Scan.of("L" + ID.text().substring(1)));
    assertEquals(Scan.Which.FILTER_ID, bare.which());
    assertTrue(bare.message().contains("check character"), bare.message());
    assertNull(bare.filterOrNull());
  }

  @Test
  void a_right_outer_check_over_a_wrong_id_is_not_trusted() {
    String body = "L" + BAG.text().substring(1, BAG.text().length() - 1);
    for (int i = 0; i < 28; i++) {
      String text = body + Alphabet.at(i);
      if (CheckCharacter.MOD_37_2.holds(text)) {
        Scan.WrongCheck wrong = assertInstanceOf(Scan.WrongCheck.class, Scan.of(text));
        assertEquals(Scan.Which.FILTER_ID, wrong.which());
        return;
      }
    }
    // This ID gives an outer check outside the alphabet; choose another ID for the test then.
    throw new AssertionError("no usable check for this ID");
  }

  @Test
  void both_checks_right_but_letters_in_the_mass_or_a_revision_of_zero_make_no_sense() {
    assertNoSense(ID.text() + "51" + "12B74");
    assertNoSense(ID.text() + "50" + "12874");
    assertNoSense(ID.text() + "01" + "12874");
    assertNoSense(ID.text() + "51" + "0000000012874".substring(2));
  }

  private static void assertNoSense(String body) {
    char check = CheckCharacter.MOD_37_2.of(body);
    String text = body + check;
    for (char c : "23456789".toCharArray()) {
      if (!Alphabet.contains(text.charAt(text.length() - 1))) {
        body = body.substring(0, body.length() - 1) + c;
        text = body + CheckCharacter.MOD_37_2.of(body);
      }
    }
    Scan.Damaged damaged = assertInstanceOf(Scan.Damaged.class, Scan.of(text), text);
    assertTrue(damaged.why().contains("mass"), damaged.why());
  }

  @Test
  void codes_typed_through_another_keyboard_are_repaired_and_said_so() {
    Map<String, String> digits =
        Map.of("French", "à&é\"'(-è_ç", "Belgian", "à&é\"'(§è!ç", "Czech or Slovak", "é+ěščřžýáí");
    for (Map.Entry<String, String> layout : digits.entrySet()) {
      for (String text : List.of(ID.text(), BAG.text())) {
        StringBuilder typed = new StringBuilder();
        for (char c : text.toCharArray()) {
          typed.append(Character.isDigit(c) ? layout.getValue().charAt(c - '0') : c);
        }
        Scan scan = Scan.of(typed.toString());
        Scan.OtherLayout other = assertInstanceOf(Scan.OtherLayout.class, scan, layout.getKey());
        assertNotNull(other.repaired());
        assertEquals(ID, other.repaired().filterOrNull());
        assertNull(scan.filterOrNull());
        assertTrue(scan.message().contains("keyboard"), scan.message());
        assertTrue(scan.message().contains("could be read"), scan.message());
      }
    }
  }

  @Test
  void the_named_layout_is_the_one_that_fits() {
    // A code that holds a 6 or a 9 tells French from Belgian.
    FilterId id = BatchCode.of(new BenchCode("K6DF"), 7).filters().findFirst().orElseThrow();
    String text = new BagCode(id, "0.12986", 1).text();
    assertEquals("French", layout(text, "à&é\"'(-è_ç"));
    assertEquals("Belgian", layout(text, "à&é\"'(§è!ç"));
    assertEquals("Czech or Slovak", layout(text, "é+ěščřžýáí"));
  }

  private static String layout(String text, String digits) {
    StringBuilder typed = new StringBuilder();
    for (char c : text.toCharArray()) {
      typed.append(Character.isDigit(c) ? digits.charAt(c - '0') : c);
    }
    return assertInstanceOf(Scan.OtherLayout.class, Scan.of(typed.toString())).layout();
  }

  @Test
  void cyrillic_and_greek_letters_in_place_of_ours_are_repaired() {
    String latin = "BCDEFGHJKLNPRSTUVX";
    for (String foreign : List.of("ИСВУАПРОЛДТЗКЫЕГМЧ", "ΒΨΔΕΦΓΗΞΚΛΝΠΡΣΤΘΩΧ")) {
      StringBuilder typed = new StringBuilder();
      for (char c : BAG.text().toCharArray()) {
        int at = latin.indexOf(c);
        typed.append(at < 0 ? c : foreign.charAt(at));
      }
      Scan.OtherLayout other =
          assertInstanceOf(
              Scan.OtherLayout.class, Scan.of(typed.toString().toLowerCase(Locale.ROOT)));
      assertEquals(new Scan.Bag(BAG), other.repaired());
    }
  }

  @Test
  void a_keyboard_we_do_not_know_is_suspected_but_not_guessed_at() {
    for (String entered : List.of("ひらがな", "K\"DF_(&)", "ığüşöç", "K3DF+ěšč", "K3DF!'")) {
      Scan.OtherLayout other = assertInstanceOf(Scan.OtherLayout.class, Scan.of(entered), entered);
      assertNull(other.repaired());
      assertEquals("unknown", other.layout());
      assertTrue(other.message().contains("Set both"), other.message());
    }
  }
}
