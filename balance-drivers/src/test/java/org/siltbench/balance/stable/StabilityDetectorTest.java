package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.siltbench.balance.Reading;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

class StabilityDetectorTest {

  private static final DoubleUnaryOperator REST = t -> 11_234.3;
  private static final DoubleUnaryOperator LOADED = t -> 11_234.3 * (1 - Math.exp(-t / 0.4));

  private static StableMass stable(Feed feed) {
    return assertInstanceOf(Verdict.Stable.class, feed.last).mass();
  }

  @Test
  void aCalmLoadIsStableWithItsUncertainty() {
    Feed feed = Feed.usual(1);
    assertTrue(feed.untilStable(40, LOADED) < 30);
    StableMass mass = stable(feed);
    assertEquals(112.343, mass.mass().milligrams(), 0.011);
    assertTrue(mass.standardUncertaintyMg() > 0 && mass.standardUncertaintyMg() < 0.003);
    assertEquals(new Mass(10_000), mass.resolution());
  }

  /** Most balances at rest show one value for minutes; noise that never moves a digit is none. */
  @Test
  void aDisplayThatStandsStillIsStableAtAnyRate() {
    for (long division : new long[] {1_000_000, 100_000, 10_000, 1_000}) {
      for (int rate : new int[] {1, 2, 5, 10, 15, 30, 50}) {
        Feed feed = new Feed(StabilitySettings.usual(), 1, division, rate, 0.02);
        double after = feed.untilStable(90, t -> 20 * (1 - Math.exp(-t / 0.5)));
        assertTrue(after < 33, () -> division + " ng at " + rate + " a second: " + after);
        assertEquals(20 * division, stable(feed).mass().nanograms());
      }
    }
  }

  /** The last digit changes once, long after the load: what stood before it is left out. */
  @Test
  void aDisplayThatStandsStillAfterALateChangeIsRecordedThere() {
    Feed feed = new Feed(StabilitySettings.usual(), 1, 10_000, 10, 0);
    double after = feed.untilStable(90, t -> t < 12 ? 20 - 20 * Math.exp(-t / 0.5) : 21);
    assertTrue(after > 27 && after < 45, () -> "after " + after);
    assertEquals(210_000, stable(feed).mass().nanograms());
  }

  /** A drift of a division in 12 s: the digits step, and never stand for a watch. */
  @Test
  void aQuietDisplayThatClimbsDigitByDigitDoesNotStandStill() {
    Feed feed = new Feed(StabilitySettings.usual(), 1, 10_000, 10, 0.02);
    feed.play(80, t -> 20 + 40 * (1 - Math.exp(-t / 150.0)));
    assertFalse(feed.everStable);
  }

  @Test
  void aMarkThatSpeaksAgainstHoldsUpADisplayThatStandsStillToo() {
    Feed feed = new Feed(StabilitySettings.usual(), 1, 10_000, 10, 0);
    feed.play(14, t -> 20, Reading.Mark.STABLE).play(6, t -> 20, Reading.Mark.MOVING);
    assertFalse(feed.everStable);
    assertTrue(feed.play(1, t -> 20, Reading.Mark.STABLE).everStable);
  }

  @Test
  void aProvisionalValueShowsWithinSecondsAndLongBeforeTheRecord() {
    Feed feed = Feed.usual(2).play(6, LOADED);
    assertInstanceOf(Verdict.Provisional.class, feed.last);
    assertFalse(feed.everStable);
  }

  @Test
  void aProvisionalValueIsWithdrawnWhenTheDisplayMovesOn() {
    Feed feed = Feed.usual(3).play(5, LOADED).play(1, t -> 11_234 + 40 * t);
    assertFalse(feed.last instanceof Verdict.Provisional, feed.last::toString);
  }

  @Test
  void finerNoiseNeedsAShorterWatchThanCoarse() {
    Feed fine = new Feed(StabilitySettings.usual(), 4, 1_000, 10, 0.8);
    Feed coarse = new Feed(StabilitySettings.usual(), 4, 100_000, 10, 0.8);
    assertTrue(fine.untilStable(60, LOADED) < coarse.untilStable(60, LOADED));
  }

  @Test
  void aWarmFilterIsNotAcceptedWhileItIsFarFromItsMass() {
    for (int seed = 0; seed < 10; seed++) {
      Feed feed = Feed.usual(seed);
      feed.untilStable(120, t -> 11_234 - 60 * Math.exp(-t / 40));
      if (feed.last instanceof Verdict.Stable s) {
        assertEquals(112.34, s.mass().mass().milligrams(), 0.1);
      }
    }
  }

  @Test
  void aSteadyGainIsToldWithItsRate() {
    Feed feed = Feed.usual(5).play(25, t -> 11_234 + 0.8 * t);
    Verdict.TakingUp up = assertInstanceOf(Verdict.TakingUp.class, feed.last);
    assertEquals(0.48, up.mgPerMin(), 0.05);
    assertFalse(up.allowed());
    assertTrue(up.atExitMg() < 112.5);
  }

  @Test
  void aSmallGainIsAcceptedWithinTheAllowanceAndGoesIntoTheMoisture() {
    Feed feed = new Feed(StabilitySettings.usual(), 6, 1_000, 10, 0.6);
    feed.detector.outOfDesiccatorSince(Math.round((feed.now() - 5) * 1e9));
    double took = feed.untilStable(60, t -> 112_340 + 0.1 * t);
    StableMass mass = stable(feed);
    assertEquals(0.0001 * (took + 5), mass.moistureMg(), 0.0015);
    assertEquals(0.006, mass.driftMgPerMin(), 0.003);
    assertEquals(112.34, mass.mass().milligrams(), 0.01);
  }

  @Test
  void aMethodThatAllowsNoMoistureRefusesTheSameGain() {
    StabilitySettings strict =
        new StabilitySettings(new Mass(100_000), Mass.ZERO, new Mass(10_000));
    Feed feed = new Feed(strict, 6, 10_000, 10, 0.6);
    feed.play(40, t -> 11_234 + 0.08 * t);
    assertFalse(feed.everStable);
    assertInstanceOf(Verdict.TakingUp.class, feed.last);
  }

  @Test
  void aJumpDisturbsAndTheWatchBeginsAnew() {
    Feed feed = Feed.usual(7).play(8, LOADED).play(12, t -> 11_434.3);
    assertFalse(feed.everStable);
    feed.untilStable(40, t -> 11_434.3);
    assertEquals(114.343, stable(feed).mass().milligrams(), 0.011);
  }

  @Test
  void aJumpIsCalledADisturbance() {
    Feed feed = Feed.usual(8).play(10, LOADED);
    boolean told = false;
    for (int i = 0; i < 30; i++) {
      feed.play(0.1, t -> 12_000);
      told |= feed.last instanceof Verdict.Disturbed;
    }
    assertTrue(told);
  }

  @Test
  void theBalancesOwnMarkMakesNoMass() {
    Feed feed = Feed.usual(9).play(30, t -> 11_234 + 3 * t, Reading.Mark.STABLE);
    assertFalse(feed.everStable);
  }

  @Test
  void aBalanceThatIsMostlyStableAndSaysMovingIsHeard() {
    Marks marks = new Marks();
    marks.take(Reading.Mark.STABLE);
    marks.take(Reading.Mark.STABLE);
    assertFalse(marks.speakAgainst());
    marks.take(Reading.Mark.MOVING);
    assertTrue(marks.speakAgainst());
    marks.take(Reading.Mark.MOVING);
    assertFalse(marks.speakAgainst());
  }

  @Test
  void overRangeIsToldAndForgetsWhatCameBefore() {
    Feed feed = Feed.usual(10).play(10, LOADED);
    feed.take(feed.other(Reading.Kind.OVER));
    assertEquals(new Verdict.OutOfRange(Reading.Kind.OVER, PanSays.OVER), feed.last);
    feed.play(2, REST);
    assertFalse(feed.everStable);
  }

  @Test
  void underRangeAndFaultAreTold() {
    Feed feed = Feed.usual(11);
    feed.take(feed.other(Reading.Kind.UNDER));
    assertEquals(new Verdict.OutOfRange(Reading.Kind.UNDER, PanSays.UNDER), feed.last);
    feed.take(feed.other(Reading.Kind.FAULT));
    assertEquals(new Verdict.OutOfRange(Reading.Kind.FAULT, PanSays.FAULT), feed.last);
  }

  @Test
  void aLostLinkForgetsWhatCameBefore() {
    Feed feed = Feed.usual(12).play(10, LOADED);
    assertEquals(new Verdict.LinkLost(), feed.detector.linkLost());
    feed.play(2.5, REST);
    assertFalse(feed.everStable);
  }

  @Test
  void aGapInTheStreamBeginsAnew() {
    Feed feed = Feed.usual(13).play(11, LOADED).pause(5).play(2.5, REST);
    assertFalse(feed.everStable);
    feed.untilStable(40, REST);
    assertTrue(stable(feed).evidence().get(0).nanos() > 66e9 - 1);
  }

  @Test
  void repeatedReadingsAndArrivalsInOneInstantDoNoHarm() {
    Feed feed = Feed.usual(14);
    for (int i = 0; i < 400 && !feed.everStable; i++) {
      feed.play(0.1, LOADED.andThen(x -> 11_234));
      feed.take(feed.reading(11_234, 5, Reading.Mark.NONE));
      feed.take(feed.reading(11_234, 5, Reading.Mark.NONE));
    }
    assertEquals(112.34, stable(feed).mass().milligrams(), 0.011);
  }

  @Test
  void aNegativeLoadIsWeighedWithItsSign() {
    Feed feed = Feed.usual(15);
    feed.untilStable(40, t -> -532.2);
    assertEquals(-5.32, stable(feed).mass().milligrams(), 0.011);
    assertTrue(stable(feed).digits().startsWith("-"));
  }

  @Test
  void aLoadAroundZeroIsWeighed() {
    Feed feed = Feed.usual(16);
    feed.untilStable(40, t -> 0.3);
    assertEquals(0, stable(feed).mass().milligrams(), 0.011);
  }

  @Test
  void coarserDigitsWhileMovingAreNotMixedWithFinerOnes() {
    Feed feed = Feed.usual(17);
    for (int i = 0; i < 30; i++) {
      feed.take(feed.reading(11_200, 4, Reading.Mark.MOVING));
      feed.pause(0.1);
    }
    assertFalse(feed.everStable);
    feed.untilStable(40, REST);
    StableMass mass = stable(feed);
    assertEquals(new Mass(10_000), mass.resolution());
    assertTrue(mass.evidence().stream().allMatch(r -> r.digits().length() == 7));
  }

  @Test
  void aConfiguredResolutionStandsAgainstTheDigits() {
    StabilitySettings fives =
        new StabilitySettings(new Mass(100_000), new Mass(100_000), new Mass(50_000));
    Feed feed = new Feed(fives, 18, 50_000, 10, 0.5);
    feed.untilStable(60, t -> 2_000.2);
    assertEquals(new Mass(50_000), stable(feed).resolution());
  }

  @Test
  void oneReadingASecondWorks() {
    Feed feed = new Feed(StabilitySettings.usual(), 19, 10_000, 1, 0.6);
    feed.untilStable(90, LOADED);
    assertEquals(112.343, stable(feed).mass().milligrams(), 0.015);
  }

  @Test
  void fiftyReadingsASecondForAnHourStayWithinBoundedMemory() {
    Feed feed = new Feed(StabilitySettings.usual(), 20, 10_000, 50, 0.6);
    feed.play(3_600, t -> 11_234 + 150 * Math.sin(t / 3));
    assertFalse(feed.everStable);
    feed.untilStable(60, REST);
    assertTrue(stable(feed).evidence().size() <= 2_048);
  }

  @Test
  void aToleranceOfNothingIsNonsense() {
    org.junit.jupiter.api.Assertions.assertThrows(
        IllegalArgumentException.class,
        () -> new StabilitySettings(Mass.ZERO, Mass.ZERO, Mass.ZERO));
  }
}
