package org.siltbench.calc.id;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class IdentityTest {

  private static final BenchCode BENCH = new BenchCode("K3DF");
  private static final BatchCode BATCH = BatchCode.of(BENCH, 7);

  @Test
  void the_alphabet_is_28_characters_that_keyboards_do_not_move() {
    assertEquals(28, Alphabet.SIZE);
    assertEquals(28, Alphabet.CHARACTERS.chars().distinct().count());
    for (char c : "AQWZYMIOaqwb-* ".toCharArray()) {
      assertFalse(Alphabet.contains(c), String.valueOf(c));
      assertEquals(-1, Alphabet.valueOf(c));
    }
    assertTrue(Alphabet.contains('0'));
    assertEquals(27, Alphabet.valueOf('X'));
    assertEquals('B', Alphabet.at(10));
  }

  @Test
  void a_bench_code_starts_with_a_letter_so_that_no_spreadsheet_takes_an_id_for_a_number() {
    Set<Character> firsts = new HashSet<>();
    Set<Character> others = new HashSet<>();
    Random random = new Random(1);
    for (int i = 0; i < 2000; i++) {
      String code = BenchCode.random(random).text();
      assertEquals(4, code.length());
      firsts.add(code.charAt(0));
      others.add(code.charAt(3));
    }
    assertEquals(18, firsts.size());
    assertTrue(firsts.stream().allMatch(Character::isLetter));
    assertEquals(28, others.size());
  }

  @Test
  void a_wrong_bench_code_is_refused() {
    for (String wrong : List.of("", "K3D", "K3DFX", "3KDF", "K3DA", "k3df", "K3D ")) {
      assertThrows(IllegalArgumentException.class, () -> new BenchCode(wrong), wrong);
    }
  }

  @Test
  void batch_codes_count_up_in_the_alphabet_and_know_their_bench() {
    assertEquals("K3DF07", BATCH.text());
    assertEquals("K3DF01", BatchCode.of(BENCH, 1).text());
    assertEquals("K3DF10", BatchCode.of(BENCH, 28).text());
    assertEquals("K3DFXX", BatchCode.of(BENCH, 783).text());
    assertEquals(783, new BatchCode("K3DFXX").serial());
    assertEquals(BENCH, BATCH.bench());
    assertEquals("K3DF07", BATCH.toString());
    assertEquals("K3DF", BENCH.toString());
    assertThrows(IllegalArgumentException.class, () -> BatchCode.of(BENCH, 0));
    assertThrows(IllegalArgumentException.class, () -> BatchCode.of(BENCH, 784));
    assertThrows(IllegalArgumentException.class, () -> new BatchCode("K3DF0"));
    assertThrows(IllegalArgumentException.class, () -> new BatchCode("K3DF0Q"));
    assertThrows(IllegalArgumentException.class, () -> new BatchCode("33DF07"));
  }

  @Test
  void filter_ids_of_a_batch_are_distinct_ordered_and_all_hold_their_check() {
    List<FilterId> ids = BATCH.filters().toList();
    assertEquals(ids.size(), new HashSet<>(ids).size());
    assertEquals(ids.stream().sorted().toList(), ids);
    assertTrue(ids.get(0).compareTo(ids.get(1)) < 0);
    assertTrue(ids.get(1).compareTo(ids.get(0)) > 0);
    assertTrue(ids.size() > 560 && ids.size() < 620, "size " + ids.size());
    for (FilterId id : ids) {
      assertTrue(CheckCharacter.MOD_37_2.holds(id.text()));
      assertTrue(Alphabet.covers(id.text()));
      assertEquals(BATCH, id.batch());
    }
    assertEquals(783, ids.get(ids.size() - 1).serial(), 12);
    assertTrue(ids.get(0).serial() >= 1);
  }

  @Test
  void serials_without_a_usable_check_character_are_left_out() {
    Set<Integer> serials = new HashSet<>();
    BATCH.filters().forEach(id -> serials.add(id.serial()));
    for (int serial = 1; serial <= FilterId.LAST_SERIAL; serial++) {
      String body = "K3DF07" + Alphabet.at(serial / 28) + Alphabet.at(serial % 28);
      char check = CheckCharacter.MOD_37_2.of(body);
      assertEquals(Alphabet.contains(check), serials.contains(serial), body);
    }
  }

  @Test
  void asking_for_more_filters_than_a_batch_holds_is_refused_with_the_number() {
    assertEquals(48, BATCH.filters(48).size());
    int all = (int) BATCH.filters().count();
    assertEquals(all, BATCH.filters(all).size());
    for (int wrong : new int[] {0, -1, all + 1}) {
      IllegalArgumentException e =
          assertThrows(IllegalArgumentException.class, () -> BATCH.filters(wrong));
      assertTrue(e.getMessage().contains(String.valueOf(all)), e.getMessage());
    }
  }

  @Test
  void an_id_is_printed_in_groups_and_read_back() {
    FilterId id = BATCH.filters(1).get(0);
    assertEquals("K3DF-07-" + id.text().substring(6), id.grouped());
    assertEquals(new Scan.Bare(id), Scan.of(id.grouped()));
    assertEquals(id.text(), id.toString());
  }

  @Test
  void a_wrong_filter_id_is_refused() {
    String good = BATCH.filters(1).get(0).text();
    for (String wrong :
        List.of(
            "", good + "0", good.substring(1), good.substring(0, 8) + "A", good.toLowerCase())) {
      assertThrows(IllegalArgumentException.class, () -> new FilterId(wrong), wrong);
    }
    String digitFirst = "33DF0702";
    for (int i = 0; i < 28; i++) {
      String body = digitFirst.substring(0, 7) + Alphabet.at(i);
      String text = body + CheckCharacter.MOD_37_2.of(body);
      assertThrows(IllegalArgumentException.class, () -> new FilterId(text), text);
    }
  }
}
