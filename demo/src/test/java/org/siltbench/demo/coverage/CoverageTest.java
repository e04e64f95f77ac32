package org.siltbench.demo.coverage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.demo.ExactShare;
import org.siltbench.demo.run.CampaignMethod;

/**
 * The stated probability is 95 %. The interval by distributions is held against exact binomial
 * bounds of the count (Clopper and Pearson 1934) at 99.9 % confidence, on both sides: an inflated
 * uncertainty fails as well. The first order gets a band of two hundredths more, since it is an
 * approximation.
 */
class CoverageTest {

  private static final double STATED = 0.95;
  private static final double CONFIDENCE = 0.999;
  private static final double BAND = 0.02;

  @Test
  void theStatedUncertaintyHoldsForFourHundredSamples() throws Exception {
    holds(run(1, 2));
  }

  @Tag("long")
  @Test
  void theStatedUncertaintyHoldsForTwoThousandSamples() throws Exception {
    holds(run(1, 10));
  }

  private static Coverage run(int firstSeed, int seeds) throws Exception {
    Coverage all = new Coverage(0, 0, 0);
    for (int seed = firstSeed; seed < firstSeed + seeds; seed++) {
      all = all.plus(new CoverageRun(CampaignMethod.get(), seed).run(200));
    }
    return all;
  }

  private static void holds(Coverage c) {
    assertTrue(
        low(c.distributions(), c) <= STATED && high(c.distributions(), c) >= STATED, c::toString);
    assertTrue(
        low(c.firstOrder(), c) <= STATED + BAND && high(c.firstOrder(), c) >= STATED - BAND,
        c::toString);
  }

  private static double low(int within, Coverage c) {
    return ExactShare.low(within, c.samples(), (1 - CONFIDENCE) / 2);
  }

  private static double high(int within, Coverage c) {
    return ExactShare.high(within, c.samples(), (1 - CONFIDENCE) / 2);
  }
}
