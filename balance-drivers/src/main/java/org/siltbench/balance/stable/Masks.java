package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A drift need not show where something moves against it: a charge that jumps, a settling slower
 * than usual. Asks, when a record is near, how likely the value is wrong behind such a mask: every
 * slow exponential is fitted along with each mask. Bayesian like {@link Odds}, whose sum it goes on
 * with.
 */
final class Masks {

  private static final double JUMPS_PER_S = 0.026;
  private static final double JUMP_RANGE = 1.2;
  private static final double LAGGING = 7e-4;
  private static final double LIGHT = 1e-2;
  private static final double BRIEF_S = 1;
  private static final double NOTHING = -17;

  private final MaskBank bank = new MaskBank();
  private final Projection projection = new Projection();
  private final Idle idle;
  private final Fits fits;
  private double total;
  private double bad;

  // Of the kind of noise in hand.
  private double squares;
  private double fixed;
  private double tolerance;
  private double detectable;

  Masks(Idle idle, Fits fits) {
    this.idle = idle;
    this.fits = fits;
  }

  /**
   * Probability that a value is wrong behind a mask.
   *
   * @param weight of each kind of noise
   * @param odds what the fits say without masks
   */
  double wrong(Blocks blocks, int from, Settling settling, double[] weight, Odds odds) {
    List<Integer> kinds = kinds(weight);
    bank.run(blocks, from, settling.tau(), fits, kinds);
    total = odds.total();
    bad = 0;
    for (int k : kinds) {
      weigh(k, settling, odds);
    }
    return bad / total;
  }

  /**
   * The kinds of noise to look behind: those that weigh anything, and of those that cannot take a
   * jump for themselves, as a slow draught can, the likeliest.
   */
  private static List<Integer> kinds(double[] weight) {
    int swing = -1;
    int brief = -1;
    List<Integer> kinds = new ArrayList<>();
    for (int k = 0; k < weight.length; k++) {
      Kind kind = Kind.ALL.get(k);
      if (kind.hertz() > 0) {
        swing = swing < 0 || weight[k] > weight[swing] ? k : swing;
      } else if (kind.share() > 0 && kind.memory() < BRIEF_S) {
        brief = brief < 0 || weight[k] > weight[brief] ? k : brief;
      }
      if (weight[k] > LIGHT || kind.share() == 0) {
        kinds.add(k);
      }
    }
    Stream.of(swing, brief).filter(k -> k >= 0 && !kinds.contains(k)).forEach(kinds::add);
    return kinds;
  }

  private void weigh(int k, Settling settling, Odds odds) {
    KindFilter f = bank.filter(k);
    projection.take(f, settling.size(), fits.floor, fits.dof);
    squares = idle.squares(k) + projection.squares();
    fixed = fits.fixed(k, f, projection, idle) - odds.top();
    tolerance = odds.tolerance(k);
    detectable = odds.detectable(k);
    for (int s = 0; s < MaskBank.SLOW.size(); s++) {
      projection.shape(f, bank.shapeColumn(s));
      for (int j = 0; j < bank.masks(); j++) {
        projection.mask(f, bank.maskColumn(j, s));
        weigh(k, s, j, odds);
      }
    }
  }

  private void weigh(int k, int s, int j, Odds odds) {
    double rest = Math.max(idle.squares(k), squares - projection.explainedByBoth());
    double log = fixed + fits.log(rest);
    if (log < NOTHING) {
      return;
    }
    double variance = fits.variance(rest);
    double mask = projection.maskCoefficient();
    double now = bank.shapeNow(s);
    double error = projection.coefficientBeside() * now + mask * bank.maskNow(j, s);
    double size = Math.abs(error);
    double root = Math.sqrt(2 * Math.PI * variance);
    double width = root / Math.sqrt(projection.information()) * now / Odds.LOG_RANGE;
    double maskWidth = root / Math.sqrt(projection.maskInformation());

    Shape.Decay decay = MaskBank.SLOW.get(s);
    double limit = odds.limit(decay, detectable * Math.sqrt(variance / fits.blockVariance[k]));
    double above = decay.sinking();
    double below = bank.jumps(j) ? above : decay.rising();
    double here = Math.max(size, Math.max(0.5, 0.3 * tolerance));
    double likelihood = Kind.ALL.get(k).drifting() * Math.exp(log);
    total += likelihood * (error > 0 ? above : below) * prior(j, mask, maskWidth, here, width);

    double off = recordedOff(odds);
    double se = Math.sqrt(variance * projection.levelVarianceBeside() + odds.wandered());
    double beyond = above * tail(limit - off, se) + below * tail(limit + off, se);
    double there = Math.max(limit, 0.7 * size);
    bad += beyond * likelihood * prior(j, mask, maskWidth, there, width);
  }

  /** Prior of a mask and of an error, times the width the readings leave to both. */
  private double prior(int j, double mask, double maskWidth, double error, double width) {
    double size = Math.abs(mask);
    double share =
        bank.jumps(j)
            ? JUMPS_PER_S
                * bank.spacing()
                * Math.min(1, maskWidth / (JUMP_RANGE * Math.max(size, error)))
            : LAGGING * Math.min(1, maskWidth / (Odds.LOG_RANGE * Math.max(size, 0.5)));
    return share * Math.min(1, width / error);
  }

  private double recordedOff(Odds odds) {
    return odds.recorded() - fits.bank.anchor() - projection.levelBeside();
  }

  private double tail(double away, double se) {
    return StudentTail.above(away / se, fits.dof);
  }
}
