package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;

final class SeenTwiceTest {

  @Test
  void few_names_are_told_exactly() {
    SeenTwice seen = new SeenTwice(100);
    for (int i = 0; i < 1000; i++) {
      seen.add("name " + i);
    }
    assertEquals(Set.of(), seen.repeated());
    seen.add("name 7");
    seen.add("name 7");
    assertEquals(Set.of("name 7"), seen.repeated());
  }

  @Test
  void of_many_names_none_that_repeats_is_missed_and_few_others_are_named() {
    SeenTwice seen = new SeenTwice(Integer.MAX_VALUE);
    int n = 600_000;
    for (int i = 0; i < n; i++) {
      seen.add("F" + i);
      if (i == 150_000 || i == 500_000) {
        seen.add("F1");
        seen.add("F" + i);
        seen.add("F" + (i - 1000));
      }
    }
    assertTrue(
        seen.repeated().containsAll(Set.of("F1", "F150000", "F149000", "F500000", "F499000")));
    assertTrue(seen.repeated().size() < 5 + 20, "named " + seen.repeated().size());
  }

  @Test
  void no_more_repeated_names_are_kept_than_asked_for() {
    SeenTwice seen = new SeenTwice(3);
    for (int i = 0; i < 20; i++) {
      seen.add("n" + i / 2);
    }
    assertEquals(3, seen.repeated().size());
  }
}
