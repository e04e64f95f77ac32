package org.siltbench.station.work.weigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;

class EvidenceTest {

  private static Reading reading(int i, String raw) {
    return new Reading(
        Reading.Kind.MASS,
        Mass.ofGrams("0.12874"),
        "0.12874",
        "g",
        Reading.Mark.NONE,
        raw,
        i * 100_000_000L,
        Instant.EPOCH);
  }

  @Test
  void the_newest_lines_are_kept_within_four_kibibytes() {
    List<Reading> many = IntStream.range(0, 1000).mapToObj(i -> reading(i, "µ 0.12874 g")).toList();
    List<String> kept = Evidence.of(many);
    int bytes = String.join("\n", kept).getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes <= 4096 && bytes > 3900, "bytes: " + bytes);
    assertEquals("0 µ 0.12874 g", kept.get(kept.size() - 1));
    assertEquals("-100 µ 0.12874 g", kept.get(kept.size() - 2));
  }

  @Test
  void one_endless_line_leaves_nothing_rather_than_too_much() {
    assertEquals(List.of(), Evidence.of(List.of(reading(0, "x".repeat(5000)))));
    assertEquals(List.of(), Evidence.of(List.of()));
  }

  private static Measured measured(String digits, String unit, String zero) {
    StableMass stable =
        new StableMass(
            Mass.ofGrams(Grams.ofDisplay(digits, unit)),
            digits,
            unit,
            Mass.ofMilligrams("0.01"),
            0.004,
            0,
            0,
            List.of(reading(0, digits)));
    return Measured.observed(new PanOutcome.Stable(stable, Mass.ofGrams(zero)), "b", "standard");
  }

  @Test
  void the_displayed_digits_are_kept_while_the_zero_stays_within_one_step() {
    assertEquals("0.12870", measured("0.12870", "g", "0.00001").grams());
    assertEquals("0.12870", measured("128.70", "mg", "0").grams());
    assertEquals(null, measured("0.12870", "g", "-0.00001").shownGrams());
  }

  @Test
  void a_zero_further_off_is_taken_away_and_the_display_is_kept_beside() {
    Measured one = measured("0.12870", "g", "0.00012");
    assertEquals("0.12858", one.grams());
    assertEquals("0.12870", one.shownGrams());
  }

  @Test
  void the_uncertainty_holds_the_stretch_and_the_step() {
    // sqrt(0.004^2 + (0.01/sqrt 12)^2) = 0.0049329 mg; d/sqrt 12: GUM F.2.2.1
    assertEquals("0.000004933", measured("0.12870", "g", "0").uGrams());
  }

  @Test
  void an_unknown_unit_is_refused() {
    assertThrows(Problem.Refused.class, () -> Grams.ofDisplay("1.0", "ct"));
  }
}
