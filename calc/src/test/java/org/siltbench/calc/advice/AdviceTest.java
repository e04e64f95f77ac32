package org.siltbench.calc.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.siltbench.calc.advice.VolumeAdvice.Answer;

final class AdviceTest {

  private static final Duration QUARTER = Duration.ofMinutes(15);
  private static final Duration SIX_HOURS = Duration.ofHours(6);

  /** By hand: 6 h every 15 min is 25 samples with both ends. */
  @Test
  void filtersForAStorm() {
    SamplingPlan plan = SamplingPlan.usual(QUARTER, SIX_HOURS, 2);
    assertEquals(25, plan.samplesPerSite());
    FilterCount f = plan.filters();
    assertEquals(new FilterCount(50, 5, 3, 1, 3, 3, 6), f); // 10 % of 59 is 5.9
    assertEquals(65, f.out());
    assertEquals(71, f.total());
  }

  @Test
  void sharesRoundUpAndWholeSharesStayWhole() {
    SamplingPlan plan = new SamplingPlan(QUARTER, Duration.ofMinutes(285), 1, 2, 5, 10, 0, 0, 11);
    assertEquals(new FilterCount(20, 2, 1, 2, 2, 0, 0), plan.filters()); // 22 samples and dups
    SamplingPlan more = new SamplingPlan(QUARTER, Duration.ofMinutes(299), 1, 1, 5.1, 10, 4, 2, 21);
    assertEquals(new FilterCount(20, 2, 2, 1, 2, 2, 1), more.filters());
    SamplingPlan one = new SamplingPlan(QUARTER, Duration.ZERO, 1, 1, 0, 0, 0, 0, 20);
    assertEquals(new FilterCount(1, 0, 0, 1, 1, 0, 0), one.filters());
  }

  @Test
  void planRefusesNonsense() {
    assertThrows(
        IllegalArgumentException.class, () -> SamplingPlan.usual(Duration.ZERO, SIX_HOURS, 1));
    assertThrows(
        IllegalArgumentException.class, () -> SamplingPlan.usual(QUARTER.negated(), SIX_HOURS, 1));
    assertThrows(
        IllegalArgumentException.class, () -> SamplingPlan.usual(QUARTER, SIX_HOURS.negated(), 1));
    assertThrows(IllegalArgumentException.class, () -> SamplingPlan.usual(QUARTER, SIX_HOURS, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> SamplingPlan.usual(Duration.ofNanos(1), Duration.ofDays(9000), 1));
    assertThrows(
        IllegalArgumentException.class, () -> SamplingPlan.usual(QUARTER, SIX_HOURS, 4001));
    assertEquals(100_000, SamplingPlan.usual(QUARTER, SIX_HOURS, 4000).filters().samples());
    assertThrows(
        IllegalArgumentException.class,
        () -> new SamplingPlan(QUARTER, SIX_HOURS, 1, 0, 5, 5, 5, 0, 20));
    assertThrows(
        IllegalArgumentException.class,
        () -> new SamplingPlan(QUARTER, SIX_HOURS, 1, 1, -1, 5, 5, 0, 20));
    assertThrows(
        IllegalArgumentException.class,
        () -> new SamplingPlan(QUARTER, SIX_HOURS, 1, 1, 5, 101, 5, 0, 20));
    assertThrows(
        IllegalArgumentException.class,
        () -> new SamplingPlan(QUARTER, SIX_HOURS, 1, 1, 5, 5, -5, 0, 20));
    assertThrows(
        IllegalArgumentException.class,
        () -> new SamplingPlan(QUARTER, SIX_HOURS, 1, 1, 5, 5, 5, -1, 20));
    assertThrows(
        IllegalArgumentException.class,
        () -> new SamplingPlan(QUARTER, SIX_HOURS, 1, 1, 5, 5, 5, 0, 0));
  }

  @Property(tries = 100)
  void moreSitesNeverNeedFewerFilters(@ForAll @IntRange(min = 1, max = 50) int sites) {
    int few = SamplingPlan.usual(QUARTER, SIX_HOURS, sites).filters().total();
    assertTrue(few < SamplingPlan.usual(QUARTER, SIX_HOURS, sites + 1).filters().total());
  }

  /** 2.5 to 200 mg, u(m) 0.2 mg, mark 2 mL, 0.5 % of the volume, 50 to 1000 mL. */
  private static BenchLimits bench() {
    return new BenchLimits(2.5, 200, 0.2, 2, 0.005, 50, 1000);
  }

  @Test
  void relativeUncertaintyByHand() {
    // 100 mg/L × 200 mL = 20 mg: 0.2/20 = 1 %, 2/200 = 1 %, 0.5 %
    assertEquals(0.015, bench().relativeUncertainty(100, 200), 1e-12);
    assertThrows(IllegalArgumentException.class, () -> bench().relativeUncertainty(0, 1));
    assertThrows(IllegalArgumentException.class, () -> bench().relativeUncertainty(1, 0));
    assertThrows(IllegalArgumentException.class, () -> bench().volumeForTarget(1, 0));
    assertThrows(IllegalArgumentException.class, () -> bench().volumeForTarget(0, 1));
  }

  @Property(tries = 200)
  void theVolumeForATargetMeetsItExactly(
      @ForAll @DoubleRange(min = 1, max = 10_000) double c,
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double target) {
    double v = bench().volumeForTarget(c, target);
    assertEquals(target, bench().relativeUncertainty(c, v), 1e-9);
    assertTrue(bench().volumeForTarget(c * 2, target) < v);
  }

  @Test
  void advisedVolumeLeavesAGoodResidue() {
    VolumeAdvice a = VolumeAdvice.of(bench(), 100, 0.05);
    assertEquals(Answer.REACHABLE, a.answer());
    assertEquals(1000 * Math.hypot(0.2 / 100, 0.002) / Math.sqrt(0.0025 - 0.000025), a.from(), 1);
    assertEquals(1000, a.to());
    assertEquals(240, a.advised(), 1e-9); // √(56.9 × 1000) = 238.4
    assertEquals(24, a.residue(), 1e-9);
    assertTrue(a.relativeUncertainty() < 0.05);
    assertEquals(
        "At 100 mg/L filter about 240 mL (57 to 1000 mL will do): 24 mg on the filter, ± 1.3 %.",
        a.sentence());
  }

  @Test
  void clearWaterIsNotReachableWithACoarseBalance() {
    VolumeAdvice a = VolumeAdvice.of(bench(), 2.6, 0.05);
    assertEquals(Answer.NOT_WITH_THIS_BALANCE, a.answer());
    assertEquals(1000, a.advised());
    assertTrue(
        a.sentence().startsWith("Not reachable with this balance: at 2.6 mg/L the best is ± 7.7 %"),
        a.sentence());
    assertTrue(a.sentence().contains("± 5 % was asked for"), a.sentence());
  }

  @Test
  void otherReasonsAreSaidAsPlainly() {
    VolumeAdvice little = VolumeAdvice.of(bench(), 2, 0.2);
    assertEquals(Answer.TOO_LITTLE_SEDIMENT, little.answer());
    assertTrue(little.sentence().contains("leaves only 2 mg"), little.sentence());
    VolumeAdvice much = VolumeAdvice.of(bench(), 5000, 0.1);
    assertEquals(Answer.TOO_MUCH_SEDIMENT, much.answer());
    assertEquals(50, much.advised());
    assertEquals(250, much.residue(), 1e-9);
    assertTrue(much.sentence().contains("Use several filters"), much.sentence());
    VolumeAdvice volume = VolumeAdvice.of(bench(), 100, 0.005);
    assertEquals(Answer.NOT_WITH_THIS_VOLUME_MEASURE, volume.answer());
    assertTrue(volume.sentence().contains("volume measure"), volume.sentence());
    assertEquals(Double.POSITIVE_INFINITY, bench().volumeForTarget(100, 0.005));
    assertEquals(Answer.REACHABLE, VolumeAdvice.of(bench(), 4000, 0.1).answer()); // 50 mL just
    assertEquals(50, VolumeAdvice.of(bench(), 4000, 0.1).advised());
    assertEquals(Answer.REACHABLE, VolumeAdvice.of(bench(), 2.5, 0.2).answer()); // 1 L just
    assertEquals(2.5, VolumeAdvice.of(bench(), 2.5, 0.2).residue(), 1e-9);
  }

  @Property(tries = 300)
  void adviceKeepsItsPromise(
      @ForAll @DoubleRange(min = 0.5, max = 20_000) double c,
      @ForAll @DoubleRange(min = 0.01, max = 0.3) double target) {
    VolumeAdvice a = VolumeAdvice.of(bench(), c, target);
    assertTrue(a.advised() >= 50 && a.advised() <= 1000);
    if (a.answer() == Answer.REACHABLE) {
      assertTrue(a.relativeUncertainty() <= target * (1 + 1e-9));
      assertTrue(a.residue() >= 2.5 - 1e-9 && a.residue() <= 200 + 1e-9);
    } else {
      assertTrue(
          a.relativeUncertainty() > target || a.residue() < 2.5 || a.residue() > 200, a.toString());
    }
  }

  @Test
  void bothEndsOfAStorm() {
    StormAdvice wide = StormAdvice.of(bench(), 20, 3000, 0.1);
    assertTrue(Double.isNaN(wide.oneVolume()));
    assertTrue(wide.sentence().endsWith("filter less as the water darkens."), wide.sentence());
    StormAdvice narrow = StormAdvice.of(bench(), 50, 400, 0.1);
    double from = Math.max(narrow.clearest().from(), narrow.dirtiest().from());
    assertEquals(Math.sqrt(from * 500), narrow.oneVolume(), 1e-9);
    assertFalse(narrow.sentence().contains("No one volume"));
    assertTrue(narrow.sentence().contains("At 50 mg/L"), narrow.sentence());
    assertTrue(narrow.sentence().contains("At 400 mg/L"), narrow.sentence());
    assertEquals(50, narrow.clearest().concentration());
    assertThrows(IllegalArgumentException.class, () -> StormAdvice.of(bench(), 0, 10, 0.1));
    assertThrows(IllegalArgumentException.class, () -> StormAdvice.of(bench(), 20, 10, 0.1));
    assertThrows(IllegalArgumentException.class, () -> VolumeAdvice.of(bench(), 0, 0.1));
    assertThrows(IllegalArgumentException.class, () -> VolumeAdvice.of(bench(), 1, 0));
  }

  @Test
  void limitsRefuseNonsense() {
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(-1, 200, 0.2, 2, 0.005, 50, 1000));
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(5, 5, 0.2, 2, 0.005, 50, 1000));
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(5, 50, 0, 2, 0.005, 50, 1000));
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(5, 50, 0.2, -2, 0.005, 50, 1000));
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(5, 50, 0.2, 2, -0.005, 50, 1000));
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(5, 50, 0.2, 2, 0.005, 0, 1000));
    assertThrows(
        IllegalArgumentException.class, () -> new BenchLimits(5, 50, 0.2, 2, 0.005, 50, 50));
  }

  @Test
  void filtersThatGoOutAreSamplesBlanksDuplicatesAndTripBlanks() {
    SamplingPlan plan = new SamplingPlan(QUARTER, Duration.ofHours(24), 1, 4, 10, 20, 50, 2, 20);
    // 97 samples, 20 duplicates, 10 field blanks, 4 trip blanks: 131 out, half of it spare
    assertEquals(new FilterCount(97, 20, 10, 4, 6, 2, 66), plan.filters());
  }

  @Test
  void aStormOfOneConcentrationHasOneVolume() {
    StormAdvice same = StormAdvice.of(bench(), 4000, 4000, 0.1);
    assertEquals(50, same.oneVolume(), 1e-9);
  }

  /** 2000·s at 0.10 %, k 2, s never under 0.41 d: common practice, from memory. */
  @Test
  void theLeastNetSampleOfABalance() {
    assertEquals(8.2, LeastNetSample.milligrams(0, 0.01), 1e-12);
    assertEquals(82, LeastNetSample.milligrams(0.04, 0.1), 1e-12);
    assertEquals(84, LeastNetSample.milligrams(0.042, 0.1), 1e-12);
    assertEquals(0, LeastNetSample.milligrams(0, 0));
    assertThrows(IllegalArgumentException.class, () -> LeastNetSample.milligrams(-1, 0.1));
    assertThrows(IllegalArgumentException.class, () -> LeastNetSample.milligrams(0, Double.NaN));
  }
}
