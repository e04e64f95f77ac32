package org.siltbench.calc.ignition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.ignition.FilterFitness.Answer;
import org.siltbench.calc.ignition.FilterFitness.Material;
import org.siltbench.calc.stats.RunningSummary;

final class IgnitionTest {

  /** SM 2540 E: filters pre-muffled at 550 ± 50 °C (check values A9). */
  @Test
  void onlyMuffledFiltersThatDoNotBurnGoIntoTheFurnace() {
    assertEquals(Answer.FIT, FilterFitness.judge(Material.GLASS_FIBRE, true, 550));
    assertEquals(Answer.FIT, FilterFitness.judge(Material.QUARTZ_FIBRE, true, 500));
    assertEquals(Answer.FIT, FilterFitness.judge(Material.GLASS_FIBRE, true, 600));
    assertEquals(Answer.MUFFLED_TOO_COLD, FilterFitness.judge(Material.GLASS_FIBRE, true, 499));
    assertEquals(Answer.NOT_MUFFLED, FilterFitness.judge(Material.GLASS_FIBRE, false, 0));
    assertEquals(Answer.NOT_MUFFLED, FilterFitness.judge(Material.QUARTZ_FIBRE, false, Double.NaN));
    assertEquals(Answer.COMBUSTIBLE, FilterFitness.judge(Material.CELLULOSE, true, 550));
    assertEquals(Answer.COMBUSTIBLE, FilterFitness.judge(Material.MEMBRANE, true, 550));
    assertEquals(Answer.COMBUSTIBLE, FilterFitness.judge(Material.BOUND_GLASS_FIBRE, true, 550));
    assertThrows(
        IllegalArgumentException.class,
        () -> FilterFitness.judge(Material.GLASS_FIBRE, true, Double.NaN));
  }

  @Test
  void volatileAndFixedSolidsByHand() {
    IgnitionResult r =
        IgnitionResult.of(
            new IgnitionResult.Masses(120.0, 160.5, 150.2, -0.3, 0.2), 0.1, 0.05, 0.08);
    assertEquals(40.8, r.total(), 1e-9);
    assertEquals(10.1, r.volatileSolids(), 1e-9);
    assertEquals(30.7, r.fixed(), 1e-9);
    assertEquals(10.1 / 40.8, r.volatileShare(), 1e-12);
    assertEquals(Math.sqrt(0.02 + 0.0025), r.totalUncertainty(), 1e-12);
    assertEquals(Math.sqrt(0.02 + 0.0064), r.volatileUncertainty(), 1e-12);
    assertEquals(Math.sqrt(0.02 + 0.0064 + 0.0025), r.fixedUncertainty(), 1e-12);
  }

  /** Simulated: the same weighings and blanks drawn 200 000 times. */
  @Test
  void uncertaintiesAndCorrelationAgreeWithSimulation() {
    Random g = new Random(4);
    RunningSummary v = new RunningSummary();
    RunningSummary f = new RunningSummary();
    RunningSummary sum = new RunningSummary();
    for (int i = 0; i < 200_000; i++) {
      IgnitionResult r =
          IgnitionResult.of(
              new IgnitionResult.Masses(
                  120 + 0.1 * g.nextGaussian(),
                  160 + 0.1 * g.nextGaussian(),
                  150 + 0.1 * g.nextGaussian(),
                  0.05 * g.nextGaussian(),
                  0.2 + 0.08 * g.nextGaussian()),
              0.1,
              0.05,
              0.08);
      v.add(r.volatileSolids());
      f.add(r.fixed());
      sum.add(r.fixed() + r.volatileSolids());
    }
    IgnitionResult r =
        IgnitionResult.of(new IgnitionResult.Masses(120, 160, 150, 0, 0.2), 0.1, 0.05, 0.08);
    double uv = v.summary().deviation();
    double uf = f.summary().deviation();
    double us = sum.summary().deviation();
    assertEquals(r.volatileUncertainty(), uv, 0.01 * uv);
    assertEquals(r.fixedUncertainty(), uf, 0.01 * uf);
    assertEquals(r.totalUncertainty(), us, 0.01 * us);
    assertEquals(r.correlation(), (us * us - uv * uv - uf * uf) / (2 * uv * uf), 0.01);
  }

  @Test
  void hostileResidues() {
    IgnitionResult none =
        IgnitionResult.of(new IgnitionResult.Masses(120, 120, 120.1, 0, 0), 0, 0, 0);
    assertEquals(0, none.total());
    assertEquals(-0.1, none.volatileSolids(), 1e-12);
    assertTrue(Double.isNaN(none.volatileShare()));
    assertEquals(0, none.correlation());
    assertThrows(
        IllegalArgumentException.class, () -> new IgnitionResult.Masses(Double.NaN, 1, 1, 0, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new IgnitionResult.Masses(1, Double.NaN, 1, 0, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new IgnitionResult.Masses(1, 1, Double.NaN, 0, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new IgnitionResult.Masses(1, 1, 1, Double.NaN, 0));
    assertThrows(
        IllegalArgumentException.class, () -> new IgnitionResult.Masses(1, 1, 1, 0, Double.NaN));
    IgnitionResult.Masses m = new IgnitionResult.Masses(1, 2, 1, 0, 0);
    assertThrows(IllegalArgumentException.class, () -> IgnitionResult.of(m, -1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> IgnitionResult.of(m, 0, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> IgnitionResult.of(m, 0, 0, -1));
  }

  @Test
  void whatTheFiltersShareDoesNotAverageOut() {
    List<SummedResidue.Part> parts =
        List.of(new SummedResidue.Part(30, 0.3, 1), new SummedResidue.Part(10, 0.4, 1));
    SummedResidue s = SummedResidue.of(parts, 0.5, 0.2, 0.01);
    assertEquals(39, s.residue(), 1e-12);
    assertEquals(0.5, s.independent(), 1e-12);
    assertEquals(0.4, s.blank(), 1e-12); // 2 × 0.2, not √2 × 0.2
    assertEquals(0.4, s.scale(), 1e-12); // 40 × 0.01
    assertEquals(Math.sqrt(0.25 + 0.16 + 0.16), s.uncertainty(), 1e-12);
  }

  /** Simulated: one blank and one scale error drawn per sample, own errors per filter. */
  @Test
  void uncertaintyOfTheSumAgreesWithSimulation() {
    Random g = new Random(8);
    RunningSummary sums = new RunningSummary();
    for (int i = 0; i < 200_000; i++) {
      double blank = 0.5 + 0.2 * g.nextGaussian();
      double scale = 1 + 0.01 * g.nextGaussian();
      List<SummedResidue.Part> parts = new ArrayList<>();
      parts.add(new SummedResidue.Part((30 + 0.3 * g.nextGaussian()) * scale, 0, 1));
      parts.add(new SummedResidue.Part((10 + 0.4 * g.nextGaussian()) * scale, 0, 1));
      parts.add(new SummedResidue.Part((5 + 0.1 * g.nextGaussian()) * scale, 0, 0));
      sums.add(SummedResidue.of(parts, blank, 0, 0).residue());
    }
    SummedResidue s =
        SummedResidue.of(
            List.of(
                new SummedResidue.Part(30, 0.3, 1),
                new SummedResidue.Part(10, 0.4, 1),
                new SummedResidue.Part(5, 0.1, 0)),
            0.5,
            0.2,
            0.01);
    assertEquals(s.residue(), sums.summary().mean(), 0.01);
    assertEquals(s.uncertainty(), sums.summary().deviation(), 0.01 * s.uncertainty());
  }

  @Test
  void sandAndFinesOverOneVolume() {
    SandAndFines r =
        SandAndFines.of(
            new SummedResidue.Part(6, 0.03, 0),
            new SummedResidue.Part(14.5, 0.04, 1),
            0.5,
            0.12,
            0,
            0.4,
            0.004);
    assertEquals(15, r.sand(), 1e-12);
    assertEquals(35, r.fines(), 1e-12);
    assertEquals(50, r.total(), 1e-12);
    assertEquals(30, r.sandPercent(), 1e-12);
    assertEquals(Math.hypot(0.13 / 0.4, 50 * 0.01), r.totalUncertainty(), 1e-12);
    SandAndFines none =
        SandAndFines.of(
            new SummedResidue.Part(-0.1, 0, 0), new SummedResidue.Part(0.1, 0, 1), 0, 0, 0, 1, 0);
    assertTrue(Double.isNaN(none.sandPercent()));
    SandAndFines blanked =
        SandAndFines.of(
            new SummedResidue.Part(1, 0, 2), new SummedResidue.Part(1, 0, 1), 0.1, 0, 0.5, 1, 0);
    assertEquals(0.8, blanked.sand(), 1e-12);
    assertEquals(0.9, blanked.fines(), 1e-12);
    assertEquals(1, blanked.totalUncertainty(), 1e-12);
  }

  @Test
  void sumsRefuseNonsense() {
    List<SummedResidue.Part> one = List.of(new SummedResidue.Part(1, 0, 1));
    assertThrows(IllegalArgumentException.class, () -> SummedResidue.of(List.of(), 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> SummedResidue.of(one, Double.NaN, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> SummedResidue.of(one, 0, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> SummedResidue.of(one, 0, 0, -1));
    assertThrows(IllegalArgumentException.class, () -> new SummedResidue.Part(Double.NaN, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> new SummedResidue.Part(0, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> new SummedResidue.Part(0, 0, -1));
    SummedResidue.Part p = one.get(0);
    assertThrows(IllegalArgumentException.class, () -> SandAndFines.of(p, p, 0, 0, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> SandAndFines.of(p, p, 0, 0, 0, 1, -1));
  }
}
