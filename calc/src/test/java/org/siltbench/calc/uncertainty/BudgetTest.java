package org.siltbench.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class BudgetTest {

  private static final double INF = Double.POSITIVE_INFINITY;

  private static Part part(String name, double u, double c, double dof) {
    return new Part(name, u, "mg", c, dof);
  }

  @Test
  void a_budget_without_parts_is_certain() {
    Budget budget = Budget.ofIndependent(1, "mg", List.of());
    assertEquals(0, budget.u());
    assertEquals(INF, budget.dof());
    assertArrayEquals(new double[0], budget.shares());
    assertEquals(0, budget.expanded(Coverage.ofProbability(0.95)));
    assertEquals(1, budget.value());
    assertEquals("mg", budget.unit());
  }

  @Test
  void parts_of_zero_share_nothing_and_give_no_degrees_of_freedom() {
    Budget budget = Budget.ofIndependent(1, "mg", List.of(part("a", 0, 1, 3), part("b", 0, 1, 4)));
    assertArrayEquals(new double[] {0, 0}, budget.shares());
    assertEquals(INF, budget.dof());
    assertEquals(2, budget.parts().size());
  }

  @Test
  void one_part_keeps_its_own_degrees_of_freedom() {
    assertEquals(5, Budget.ofIndependent(1, "mg", List.of(part("a", 2, -3, 5))).dof(), 1e-12);
    assertEquals(6, Budget.ofIndependent(1, "mg", List.of(part("a", 2, -3, 5))).u(), 1e-12);
  }

  // The span of the balance acts on both weighings alike: u(m2 - m1) is that of the difference.
  @Test
  void what_acts_on_both_weighings_alike_cancels_but_for_the_residue() {
    double span = 1e-4;
    Budget both =
        new Budget(
            16.57,
            "mg",
            List.of(part("pre", 112.34 * span, -1, INF), part("post", 128.91 * span, 1, INF)),
            List.of(new Correlation("pre", "post", 1)));
    assertEquals(16.57 * span, both.u(), 1e-12);
    assertEquals(1, both.shares()[0] + both.shares()[1], 1e-9);
    assertTrue(both.shares()[0] < 0);
  }

  @Test
  void parts_that_cancel_wholly_leave_nothing_behind() {
    Budget nothing =
        new Budget(
            0,
            "mg",
            List.of(part("a", 0.1, 1, 3), part("b", 0.1, -1, 3)),
            List.of(new Correlation("a", "b", 1)));
    assertEquals(0, nothing.u(), 1e-9);
    assertEquals(INF, nothing.dof());
  }

  @Test
  void correlations_that_contradict_each_other_are_refused() {
    List<Part> parts = List.of(part("a", 1, 1, INF), part("b", 1, 1, INF), part("c", 1, 1, INF));
    List<Correlation> impossible =
        List.of(
            new Correlation("a", "b", -1),
            new Correlation("b", "c", -1),
            new Correlation("a", "c", -1));
    assertThrows(IllegalArgumentException.class, () -> new Budget(0, "mg", parts, impossible));
  }

  @Test
  void tied_parts_count_as_one_group_with_the_fewest_degrees_of_freedom() {
    List<Part> parts =
        List.of(part("a", 3, 1, 10), part("b", 4, 1, 5), part("c", 12, 1, 20), part("d", 0, 1, 1));
    Budget tied =
        new Budget(
            0,
            "mg",
            parts,
            List.of(new Correlation("a", "b", 0.5), new Correlation("b", "d", 0.3)));
    double group = 9 + 16 + 2 * 0.5 * 12;
    double total = group + 144;
    assertEquals(Math.sqrt(total), tied.u(), 1e-12);
    assertEquals(total * total / (group * group / 5 + 144.0 * 144 / 20), tied.dof(), 1e-9);
    // r = 0 ties nothing.
    Budget untied = new Budget(0, "mg", parts, List.of(new Correlation("a", "b", 0)));
    assertEquals(Budget.ofIndependent(0, "mg", parts).dof(), untied.dof(), 1e-12);
    Budget chained =
        new Budget(
            0,
            "mg",
            parts,
            List.of(
                new Correlation("c", "b", 0.1),
                new Correlation("b", "a", 0.1),
                new Correlation("d", "c", 0.1)));
    double all = chained.u() * chained.u();
    assertEquals(5, chained.dof(), 1e-9);
    assertEquals(9 + 16 + 144 + 2 * 0.1 * (48 + 12), all, 1e-9);
  }

  @Test
  void names_must_be_told_apart_and_known() {
    Part a = part("a", 1, 1, INF);
    assertThrows(
        IllegalArgumentException.class, () -> Budget.ofIndependent(0, "mg", List.of(a, a)));
    List<Correlation> unknown = List.of(new Correlation("a", "x", 1));
    assertThrows(IllegalArgumentException.class, () -> new Budget(0, "mg", List.of(a), unknown));
    assertThrows(IllegalArgumentException.class, () -> new Correlation("a", "a", 1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, -0.1, INF})
  void an_uncertainty_that_is_none_is_refused(double u) {
    assertThrows(IllegalArgumentException.class, () -> part("a", u, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.rectangular(u));
    assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.triangular(u));
    assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.resolution(u));
    assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.certificate(u, 2));
    assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.dofOfEstimate(u));
  }

  @Test
  void other_numbers_out_of_range_are_refused() {
    assertThrows(IllegalArgumentException.class, () -> part("a", 1, Double.NaN, 1));
    assertThrows(IllegalArgumentException.class, () -> part("a", 1, INF, 1));
    assertThrows(IllegalArgumentException.class, () -> part("a", 1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> part("a", 1, 1, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> new Correlation("a", "b", 1.0001));
    assertThrows(IllegalArgumentException.class, () -> new Correlation("a", "b", -1.0001));
    assertThrows(IllegalArgumentException.class, () -> new Correlation("a", "b", Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> Budget.ofIndependent(Double.NaN, "mg", List.of()));
    assertThrows(IllegalArgumentException.class, () -> StandardUncertainty.certificate(1, 0));
  }

  // GUM table G.2, t for 95 % (rounded to 0.01).
  @ParameterizedTest
  @CsvSource({
    "1, 12.71",
    "2, 4.30",
    "3, 3.18",
    "4, 2.78",
    "5, 2.57",
    "6, 2.45",
    "8, 2.31",
    "10, 2.23",
    "20, 2.09",
    "50, 2.01"
  })
  void the_factor_for_95_percent_is_student_s(double dof, double t) {
    assertEquals(t, Coverage.ofProbability(0.95).factor(dof), 0.0051);
  }

  // GUM table G.2, t for 95.45 %.
  @ParameterizedTest
  @CsvSource({
    "1, 13.97",
    "2, 4.53",
    "3, 3.31",
    "4, 2.87",
    "5, 2.65",
    "10, 2.28",
    "20, 2.13",
    "50, 2.05"
  })
  void the_factor_for_95_45_percent_is_student_s(double dof, double t) {
    assertEquals(t, Coverage.ofProbability(0.9545).factor(dof), 0.0051);
  }

  @Test
  void a_stated_factor_does_not_ask_for_degrees_of_freedom() {
    Coverage two = Coverage.ofFactor(2);
    assertEquals(2, two.factor(1));
    assertEquals(2, two.factor(INF));
    assertNull(two.probability());
    assertEquals(0.95, Coverage.ofProbability(0.95).probability());
    for (double wrong : new double[] {0, -1, INF, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> Coverage.ofFactor(wrong));
    }
    for (double wrong : new double[] {0, 1, -0.1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> Coverage.ofProbability(wrong));
    }
    assertThrows(IllegalArgumentException.class, () -> Coverage.ofProbability(0.95).factor(0));
  }

  @Test
  void a_factor_asked_for_again_is_the_same() {
    Coverage coverage = Coverage.ofProbability(0.95);
    double first = coverage.factor(3);
    assertEquals(1.959964, coverage.factor(INF), 1e-6);
    assertTrue(coverage.factor(4) < first);
    assertEquals(first, coverage.factor(3));
    assertEquals(first, coverage.factor(3));
  }

  // Against drawing numbers: three inputs, two of them correlated.
  @Test
  void a_monte_carlo_agrees_with_the_correlated_sum() {
    Random random = new Random(7);
    double sum = 0;
    double squares = 0;
    int n = 200_000;
    for (int i = 0; i < n; i++) {
      double z1 = random.nextGaussian();
      double z2 = 0.6 * z1 + 0.8 * random.nextGaussian();
      double y = 2 * 0.5 * z1 - 3 * 0.4 * z2 + 0.7 * random.nextGaussian();
      sum += y;
      squares += y * y;
    }
    double sd = Math.sqrt(squares / n - sum / n * (sum / n));
    Budget budget =
        new Budget(
            0,
            "mg",
            List.of(part("a", 0.5, 2, INF), part("b", 0.4, -3, INF), part("c", 0.7, 1, INF)),
            List.of(new Correlation("a", "b", 0.6)));
    assertEquals(sd, budget.u(), 4 * sd / Math.sqrt(2.0 * n));
  }

  @Property(tries = 200)
  void the_order_of_parts_does_not_matter_and_shares_add_up(
      @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 0.01, max = 100) Double> us,
      @ForAll long seed) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < us.size(); i++) {
      parts.add(part("p" + i, us.get(i), i % 2 == 0 ? 1.5 : -0.5, 1 + i));
    }
    Budget one = Budget.ofIndependent(1, "mg", parts);
    List<Part> shuffled = new ArrayList<>(parts);
    Collections.shuffle(shuffled, new Random(seed));
    Budget other = Budget.ofIndependent(1, "mg", shuffled);
    assertEquals(one.u(), other.u(), 1e-12 * one.u());
    assertEquals(one.dof(), other.dof(), 1e-9 * one.dof());
    double shares = 0;
    for (double share : one.shares()) {
      shares += share;
    }
    assertEquals(1, shares, 1e-12);
    assertTrue(one.dof() >= 1 - 1e-9);
  }

  @Property(tries = 200)
  void another_unit_scales_the_uncertainty_and_leaves_the_rest(
      @ForAll @DoubleRange(min = 0.01, max = 10) double a,
      @ForAll @DoubleRange(min = 0.01, max = 10) double b,
      @ForAll @DoubleRange(min = -0.99, max = 0.99) double r) {
    List<Correlation> tie = List.of(new Correlation("a", "b", r));
    Budget mg = new Budget(5, "mg", List.of(part("a", a, 1, 4), part("b", b, -2, 7)), tie);
    Budget ug =
        new Budget(5000, "µg", List.of(part("a", 1000 * a, 1, 4), part("b", 1000 * b, -2, 7)), tie);
    assertEquals(1000 * mg.u(), ug.u(), 1e-9 * ug.u());
    assertEquals(mg.dof(), ug.dof(), 1e-9 * mg.dof());
    assertArrayEquals(mg.shares(), ug.shares(), 1e-9);
  }
}
