package org.siltbench.station.work.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;

class MassWindowProperties {

  private static List<Mass> masses(List<Double> mg) {
    return mg.stream().map(m -> Mass.ofMilligrams((double) m)).toList();
  }

  @Property
  void one_double_filter_does_not_widen_the_window_so_far_that_it_fits(
      @ForAll @Size(min = 9, max = 40) List<@DoubleRange(min = 95, max = 105) Double> single) {
    List<Double> all = new ArrayList<>(single);
    all.add(200.0);
    MassWindow window = MassWindow.around(masses(all)).orElseThrow();
    assertFalse(window.holds(Mass.ofMilligrams("200")));
    long within = masses(single).stream().filter(window::holds).count();
    assertTrue(within * 2 > single.size());
  }

  @Property
  void a_window_reads_back_from_its_text(
      @ForAll @DoubleRange(min = 1, max = 500) double low,
      @ForAll @DoubleRange(min = 0.01, max = 500) double more) {
    MassWindow window = new MassWindow(Mass.ofMilligrams(low), Mass.ofMilligrams(low + more));
    assertEquals(window, MassWindow.parse(window.text()));
  }

  @Test
  void seven_filters_give_no_window_and_eight_do() {
    List<Mass> seven = masses(List.of(100.0, 101.0, 99.0, 100.5, 99.5, 100.2, 99.8));
    assertTrue(MassWindow.around(seven).isEmpty());
    List<Mass> eight = new ArrayList<>(seven);
    eight.add(Mass.ofMilligrams("100.1"));
    assertTrue(MassWindow.around(eight).isPresent());
  }

  /** Good filters of a lot that spreads by 3 % are not refused, nor is a pair let in. */
  @Test
  void the_window_holds_the_filters_of_a_lot_one_after_the_other() {
    Random random = new Random(4);
    for (int lot = 0; lot < 1_000; lot++) {
      List<Mass> seen = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        Mass next = Mass.ofMilligrams(105 + 3.15 * random.nextGaussian());
        assertTrue(MassWindow.around(seen).map(w -> w.holds(next)).orElse(true), next::toGrams);
        seen.add(next);
        Mass pair = Mass.ofMilligrams(2 * next.milligrams());
        assertFalse(MassWindow.around(seen).map(w -> w.holds(pair)).orElse(false), pair::toGrams);
      }
    }
  }

  @Test
  void filters_that_are_all_alike_leave_room_for_the_next() {
    MassWindow window = MassWindow.around(masses(java.util.Collections.nCopies(20, 100.0))).get();
    assertTrue(window.holds(Mass.ofMilligrams("101.5")));
    assertFalse(window.holds(Mass.ofMilligrams("110")));
  }

  @Test
  void a_few_filters_that_happen_to_be_alike_do_not_refuse_the_others() {
    MassWindow window = MassWindow.around(masses(java.util.Collections.nCopies(8, 100.0))).get();
    assertTrue(window.holds(Mass.ofMilligrams("120")));
    assertFalse(window.holds(Mass.ofMilligrams("200")));
  }

  @Test
  void what_is_no_window_is_refused_with_an_example() {
    for (String text : List.of("", "0.1", "0.2..0.1", "a..b", "0.1...0.2x", "..0.1")) {
      assertThrows(Problem.WrongUse.class, () -> MassWindow.parse(text), text);
    }
  }
}
