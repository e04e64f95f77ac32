package org.siltbench.station.work.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.siltbench.station.work.check.ControlSheet.Given;

class ControlSheetTest {

  private static ControlSheet sheet(double... values) {
    List<Given> given = new ArrayList<>();
    OffsetDateTime start = OffsetDateTime.parse("2026-05-01T08:00Z");
    for (int i = 0; i < values.length; i++) {
      given.add(new Given(start.plusDays(i), "w" + i, values[i]));
    }
    return ControlSheet.of("t", given);
  }

  private static List<String> rules(ControlSheet sheet, int place) {
    return sheet.signals().stream()
        .filter(s -> s.of().equals("w" + place))
        .map(ControlSheet.Signal::rule)
        .toList();
  }

  /** NIST/SEMATECH e-Handbook 6.3.2.2 (flowrate): limits 45.8159 and 55.8041, none beyond. */
  @Test
  void the_handbooks_example_has_its_limits_and_no_value_beyond() {
    ControlSheet sheet = sheet(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);
    assertEquals(50.81, sheet.limits().centre(), 1e-9);
    assertEquals(45.8159, sheet.limits().lower(), 1e-3);
    assertEquals(55.8041, sheet.limits().upper(), 1e-3);
    assertEquals(6.1347, sheet.limits().upperRange(), 1e-3);
    assertTrue(sheet.signals().stream().noneMatch(s -> s.rule().startsWith("one-")));
  }

  @Test
  void a_jump_and_a_drift_are_each_told_by_their_rule() {
    ControlSheet jump = sheet(0, 0.1, -0.1, 0, 0.1, -0.1, 0, 0.1, -0.1, 0, 3);
    assertTrue(rules(jump, 10).contains("one-beyond-three-sigma"), "" + jump.signals());
    assertTrue(rules(jump, 10).contains("moving-range"), "" + jump.signals());
    double[] drift = new double[24];
    for (int i = 0; i < drift.length; i++) {
      drift[i] = 0.02 * i + (i % 2 == 0 ? 0.05 : -0.05);
    }
    List<String> last = rules(sheet(drift), 23);
    assertTrue(last.contains("cusum"), last.toString());
    assertTrue(last.contains("ewma"), last.toString());
  }

  @Test
  void seven_values_or_equal_ones_have_no_limits() {
    assertNull(sheet(1, 2, 3, 4, 5, 6, 7).limits());
    assertNull(sheet(1, 1, 1, 1, 1, 1, 1, 1, 1).limits());
    assertEquals(9, sheet(1, 1, 1, 1, 1, 1, 1, 1, 1).points().size());
    assertEquals(0, sheet().points().size());
  }
}
