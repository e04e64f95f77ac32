package org.siltbench.demo.bench.stability;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class StabilityBenchTest {

  private static final String OURS = new OurPan().toString();

  private static Tally.Figures ours(Run run) {
    return run.tallies().get("all").get(OURS).figures();
  }

  @Test
  void noDetectablePlacementOfThreeThousandIsRecordedWrongly() {
    Run run = new Run(2026).play(0, 3_000);
    Tally.Figures ours = ours(run);
    assertEquals(List.of(), run.wrong());
    assertEquals(0, ours.wrong());
    assertTrue(ours.detectable() > 2_000, () -> "detectable: " + ours.detectable());
    assertTrue(ours.refusedShare() < 0.25, () -> "refused: " + ours.refusedShare());
    assertTrue(ours.ratioMedian() < 1.5, () -> "ratio: " + ours.ratioMedian());
    assertTrue(ours.excessMedian() < 34, () -> "excess: " + ours.excessMedian());
    for (Baseline baseline : Baseline.values()) {
      assertTrue(run.tallies().get("all").get(baseline.toString()).figures().wrong() > 0);
    }
  }

  /** So many can hold 7 in 100 000; docs/stability.md has the run that holds the goal of 1. */
  @Test
  @Tag("long")
  void noneOfFortyThousandIsWrongAndEveryBaselineIsFarWorse() {
    Run run = new Run(1).play(0, 60_000);
    Tally.Figures ours = ours(run);
    assertEquals(List.of(), run.wrong());
    assertTrue(ours.wrongPer100kHigh() < 8, () -> "bound: " + ours.wrongPer100kHigh());
    for (Baseline baseline : Baseline.values()) {
      Tally.Figures other = run.tallies().get("all").get(baseline.toString()).figures();
      assertTrue(other.wrong() > 1_000, baseline::toString);
    }
  }

  @Test
  void theSamePlacementComesFromTheSameSeed() {
    Stream one = Simulator.play(Draw.of(3, 17));
    Stream other = Simulator.play(Draw.of(3, 17));
    assertArrayEquals(one.shown(), other.shown());
    assertArrayEquals(one.time(), other.time());
  }

  /** The upper bound after no event in n trials is 1 - 0.05^(1/n), about 3/n. */
  @Test
  void noWrongInManyBoundsTheRateByThreeOverTheNumber() {
    assertEquals(0, Tally.low(0, 100_000));
    assertEquals(1 - Math.pow(0.05, 1e-5), Tally.high(0, 100_000), 1e-9);
    assertEquals(3e-5, Tally.high(0, 100_000), 1e-7);
  }

  /**
   * Clopper and Pearson, one-sided 95 %: 3 of 10 gives 0.0873 to 0.6066 (beta quantiles,
   * recomputed).
   */
  @Test
  void theBoundsAreThoseOfTheBetaDistribution() {
    assertEquals(0.0873, Tally.low(3, 10), 5e-4);
    assertEquals(0.6066, Tally.high(3, 10), 5e-4);
  }

  @Test
  void aCalmPlacementIsRightFromTheMomentItHasSettled() {
    for (long i = 0; i < 60; i++) {
      Placement placement = Draw.of(8, i);
      if (placement.kind() == Placement.Case.CALM) {
        Stream stream = Simulator.play(placement);
        assertTrue(stream.oracle() < 40, () -> "oracle " + stream.oracle());
        assertTrue(!stream.undetectable() && !stream.refusalRight());
      }
    }
  }

  @Test
  void theDocumentHasEachGroupAndWatcher() throws Exception {
    String json = StabilityMeasure.run("--json", "--n", "40", "--seed", "4", "--threads", "2");
    assertTrue(json.contains("\"all\"") && json.contains("\"case warm\""), json);
    assertTrue(json.contains("\"seeds\" : [ 4 ]"), json);
    assertTrue(json.contains("\"wait 30 s\"") && json.contains("\"siltbench\""), json);
  }

  @Test
  void theDetectorAloneGivesTheSameFigures() {
    Run alone = new Run(4, List.of()).play(0, 20);
    assertEquals(1, alone.tallies().get("all").size());
    assertEquals(ours(new Run(4).play(0, 20)), ours(alone));
  }

  @Test
  void onlyOursLeavesTheBaselinesOut() throws Exception {
    String json = StabilityMeasure.run("--json", "--n", "5", "--seed", "4", "--only", "ours");
    assertTrue(json.contains("\"siltbench\"") && !json.contains("wait 30 s"), json);
    assertThrows(IllegalArgumentException.class, () -> StabilityMeasure.run("--only", "theirs"));
  }

  /**
   * Rounding that was taken for a draught or a slow swing, a jump beside its block, two jumps that
   * were taken for a draught, a settling after a jump that was taken for all that moved, a warm
   * filter that passed through zero and was taken for the noise of the empty pan.
   */
  @Test
  void placementsOnceRecordedWronglyNoLongerAre() {
    long[][] placements = {{7006, 8164}, {6103, 13_698}, {8001, 8272}, {606, 18_316}, {611, 4534}};
    for (long[] placement : placements) {
      assertFalse(Simulator.play(Draw.of(placement[0], placement[1])).undetectable());
      Run run = new Run(placement[0], List.of()).play(placement[1], placement[1] + 1);
      assertEquals(List.of(), run.wrong());
    }
  }

  /**
   * A charge, a creep or a moisture within the tolerance that no watch can tell from rest, in a
   * draught, at the edge of a division, or beside a vibration at the rate of the readings: the
   * display is right, and a value read off it may be wrong.
   */
  @Test
  void whatMayBeReadOffWronglyWithoutShowingItIsUndetectable() {
    long[][] placements = {{8004, 2201}, {2026, 554}, {604, 13_568}, {6201, 56_531}};
    for (long[] placement : placements) {
      Stream stream = Simulator.play(Draw.of(placement[0], placement[1]));
      assertTrue(stream.hidden().sometimes());
      assertFalse(stream.hidden().whileWrong() || stream.hidden().fromTheStart());
    }
  }

  @Test
  void noiseAloneHidesNothing() {
    for (long i = 0; i < 300; i++) {
      Placement placement = Draw.of(9, i);
      if (!placement.slow().moves()) {
        assertFalse(Simulator.play(placement).undetectable());
      }
    }
  }

  @Test
  void severalSeedsAreSummed() throws Exception {
    String json = StabilityMeasure.run("--json", "--n", "5", "--seed", "4,7..8");
    assertTrue(json.contains("\"seeds\" : [ 4, 7, 8 ]"), json);
    assertTrue(json.contains("\"placements\" : 15"), json);
  }
}
