package org.siltbench.balance.stable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

class StabilityProperties {

  private static final long[] DIVISIONS = {1_000_000, 100_000, 10_000, 1_000};

  @Property(tries = 60)
  void aCalmLoadIsAcceptedNearItsMassAtAnyRateAndResolution(
      @ForAll long seed,
      @ForAll @IntRange(min = 0, max = 3) int division,
      @ForAll @IntRange(min = 5, max = 50) int rate,
      @ForAll @DoubleRange(min = 0.1, max = 1.5) double noise,
      @ForAll @DoubleRange(min = 20, max = 100_000) double load) {
    Feed feed = new Feed(StabilitySettings.usual(), seed, DIVISIONS[division], rate, noise);
    feed.untilStable(110, t -> load * (1 - Math.exp(-t / 0.5)));
    StableMass mass = ((Verdict.Stable) feed.last).mass();
    double shown = mass.mass().nanograms() / (double) DIVISIONS[division];
    double tolerance = Math.max(Math.max(1, 2 * noise), 100_000.0 / DIVISIONS[division]);
    assertEquals(load, shown, tolerance);
    assertEquals(mass.mass(), Mass.ofGrams(mass.digits()));
    assertTrue(mass.evidence().stream().anyMatch(r -> r.digits().equals(mass.digits())));
  }

  @Property(tries = 30)
  void theSameStreamGivesTheSameVerdictWhereverTheClockBegins(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Feed one = Feed.usual(seed);
    Feed other = Feed.usual(seed).pause(100_000);
    double first = one.untilStable(60, t -> 5_000);
    double second = other.untilStable(60, t -> 5_000);
    assertEquals(first, second, 1e-3);
  }

  @Property(tries = 60)
  void aDriftThatAnyoneCanSeeIsNeverAccepted(
      @ForAll long seed,
      @ForAll @IntRange(min = 5, max = 30) int rate,
      @ForAll @DoubleRange(min = 1, max = 40) double slope,
      @ForAll boolean down) {
    Feed feed = new Feed(StabilitySettings.usual(), seed, 10_000, rate, 0.8);
    feed.play(60, t -> 50_000 + (down ? -slope : slope) * t);
    assertTrue(!feed.everStable, () -> "slope " + slope);
  }

  /** Against the library's own survival function. */
  @Property
  void theTableOfTheNormalTailFollowsTheLibrary(
      @ForAll @DoubleRange(min = -12, max = 12) double z) {
    double exact = NormalDistribution.of(0, 1).survivalProbability(z);
    assertEquals(exact, NormalTail.above(z), 2e-5 + 1e-3 * exact);
  }
}
