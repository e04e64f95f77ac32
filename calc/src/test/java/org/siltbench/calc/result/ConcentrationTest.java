package org.siltbench.calc.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.method.Method;

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

  // By hand: u = sqrt(2*(0.1*sqrt2/0.5)^2 + (32.9*0.003/0.5)^2) = 0.44606; nu = u^4/(0.28284^4/9) =
  // 55.67; t 95 % of it 2.0035.
  @Test
  void a_result_explains_itself_in_figures_one_can_follow() {
    Method method = Tables.plain("blank_use = subtract", "u_mass_dof = 9");
    Tables.Outcome out =
        Tables.calculate(
            method,
            "filter,role,sample,pre_g,post1_g,post2_g,volume_ml,volume_u_ml",
            "F1,sample,,0.11234,0.12900,0.12891,500,3",
            "B1,method-blank,,0.10000,0.10012,,500,3");
    assertEquals(
        List.of(
            "Residue: 0.12891 g - 0.11234 g = 16.57 mg.",
            "Blank subtracted from each filter: 0.12 mg.",
            "Constant mass: Lost 0.09 mg; the limit is 0.5 mg.",
            "Concentration: 16.45 mg / 0.5 L = 32.9 mg/L.",
            "Uncertainty: u = 0.44606 mg/L, 55.67 degrees of freedom; U = 2.0035 x u = 0.89368 mg/L"
                + " (95 %).",
            "Largest parts: weighing 40 %, blank 40 %, volume 20 %.",
            "Reported: 33 mg/L; the reporting limit of this volume is 5 mg/L.",
            "blank-subtracted: The mean blank was subtracted."),
        Explanation.of(out.row("F1"), method));
  }

  @Test
  void the_explanation_of_a_residue_without_volume_ends_there() {
    Tables.Outcome out =
        Tables.calculate(Tables.plain(), "filter,role,pre_g,post_g", "F1,sample,0.1000,0.0999");
    List<String> lines = Explanation.of(out.row("F1"), Tables.plain());
    assertEquals("Residue: 0.0999 g - 0.1 g = -0.1 mg.", lines.get(0));
    assertTrue(lines.get(1).startsWith("Constant mass: Weighed once"), lines.get(1));
    assertTrue(lines.get(2).startsWith("negative: "), lines.get(2));
    assertEquals(2 + out.row("F1").flags().size(), lines.size());
  }

  @Test
  void the_explanation_says_when_distributions_were_propagated_or_several_filters_summed() {
    Tables.Outcome out =
        Tables.calculate(
            Tables.plain("u_mass_mg = 0"),
            "filter,role,sample,pre_g,post_g,volume_ml,volume_u_ml",
            "F1,sample,S,0.1000000,0.1500000,500,60",
            "F2,sample,S,0.1000000,0.1500000,500,60",
            "F3,sample,,0.1000000000,0.1500000000,500,0");
    List<String> lines = Explanation.of(out.row("F1"), Tables.plain());
    assertTrue(
        lines.get(2).endsWith("100 mg / 1 L = 100 mg/L over all filters of the sample."),
        lines.get(2));
    assertTrue(lines.get(3).contains("by distributions the result lies from "), lines.get(3));
    List<String> certain = Explanation.of(out.row("F3"), Tables.plain());
    assertEquals("No part of the uncertainty is known.", certain.get(4));
  }
}
