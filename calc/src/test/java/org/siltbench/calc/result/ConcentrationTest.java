package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class ConcentrationTest {

  // C = (m2 - m1)/V as in SM 2540 D: 112.34 -> 128.91 mg, 0.500 L: 33.14 mg/L; u(m) 0.1 mg each,
  // independent, u(V) 3 mL: u = 0.3457 mg/L, recomputed: sqrt((0.141421/0.5)^2 +
  // (33.14*0.003/0.5)^2).
  @Test
  void the_worked_example_gives_33_14_and_its_uncertainty() {
    Concentration c =
        Tables.calculate(
                Tables.plain(),
                "filter,role,pre_g,post_g,volume_ml,volume_u_ml",
                "F1,sample,0.11234,0.12891,500,3")
            .concentration("F1");
    assertEquals(33.14, c.mgPerL(), 1e-12);
    assertEquals(0.03314, c.gPerL(), 1e-15);
    assertEquals(0.3457, c.u(), 5e-5);
    assertEquals(Math.hypot(Math.sqrt(0.02) / 0.5, 33.14 * 0.003 / 0.5), c.u(), 1e-12);
    assertEquals(1.959964, c.k(), 1e-6);
    assertEquals(c.k() * c.u(), c.expanded(), 1e-15);
    assertTrue(Double.isInfinite(c.dof()));
    assertNull(c.interval());
  }

  @Test
  void the_budget_written_out_gives_the_same_figures() {
    Concentration c =
        Tables.calculate(
                Tables.plain("u_subsampling_pct = 2", "u_moisture_mg = 0.05", "u_mass_dof = 9"),
                "filter,role,pre_g,post_g,volume_ml,volume_u_ml",
                "F1,sample,0.11234,0.12891,500,3")
            .concentration("F1");
    assertEquals(c.u(), c.budget().u(), 1e-14);
    assertEquals(c.dof(), c.budget().dof(), 1e-9);
    assertEquals(c.mgPerL(), c.budget().value());
  }
}
