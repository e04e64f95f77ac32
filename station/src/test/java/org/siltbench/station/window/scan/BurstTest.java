package org.siltbench.station.window.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** A scanner and a person are told apart by the time between two characters. */
class BurstTest {

  private final Burst burst = new Burst();
  private long now;

  private void type(String text, int everyMillis) {
    for (char c : text.toCharArray()) {
      now += everyMillis * 1_000_000L;
      burst.add(c, now);
    }
  }

  private boolean ends(int afterMillis) {
    return burst.isScan(now + afterMillis * 1_000_000L);
  }

  @Test
  void quick_characters_with_a_quick_end_are_a_scan() {
    type("K3DF0712R", 8);
    assertTrue(ends(8));
    assertEquals("K3DF0712R", burst.text());
  }

  @Test
  void a_person_is_no_scanner_however_fast() {
    type("storm", 60);
    assertFalse(ends(60));
  }

  @Test
  void quick_characters_without_an_end_are_no_scan() {
    type("K3DF0712R", 8);
    assertFalse(ends(400));
  }

  @Test
  void a_scan_right_after_typing_is_read_without_what_was_typed() {
    type("ab", 90);
    now += 200_000_000L;
    type("K3DF0712R", 10);
    assertTrue(ends(10));
    assertEquals("K3DF0712R", burst.text());
  }

  @Test
  void two_characters_are_too_few() {
    type("12", 5);
    assertFalse(ends(5));
  }

  @Test
  void the_number_of_a_dish_is_a_scan_only_where_no_hand_could_be_so_fast() {
    type("7", 8);
    assertFalse(ends(8), "too short for a bag");
    assertTrue(burst.isShortScan(now + 8_000_000L));
    assertFalse(burst.isShortScan(now + 30_000_000L));
    type("12", 25);
    assertFalse(burst.isShortScan(now + 8_000_000L));
  }
}
