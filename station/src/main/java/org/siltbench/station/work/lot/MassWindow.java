package org.siltbench.station.work.lot;

import java.util.Collection;
import java.util.Optional;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.stats.Robust;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/**
 * The masses the clean filters of one lot may have, both ends included. Two filters stuck together,
 * a separator sheet or a wrong diameter lie outside.
 */
public record MassWindow(Mass least, Mass most) {

  /** Fewer filters than this say nothing about their lot. */
  public static final int FEWEST = 8;

  private static final double DEVIATIONS = 5;

  /** Filters of one lot are never said to be more alike than this share of their mass. */
  private static final double LEAST_DEVIATION = 0.005;

  /** A deviation from fewer filters than this is itself a guess: the window stays wide. */
  private static final int SURE = 20;

  private static final double UNSURE_DEVIATION = 0.05;

  /**
   * A robust deviation from n filters is itself uncertain by about 1.2/sqrt(n) of it (common
   * statistics of the median absolute deviation); four times that is allowed for.
   */
  private static final double DEVIATION_ERROR = 5;

  /** What is allowed for that never lets two filters pass for one. */
  private static final double MOST_UNSURE = 0.4;

  /** Refuses an empty window. */
  public MassWindow {
    if (least.isNegative() || most.compareTo(least) <= 0) {
      throw new Problem.WrongUse(LotSays.EMPTY_WINDOW, least.toGrams(), most.toGrams());
    }
  }

  /** Reads {@code 0.085..0.125}, grams. */
  public static MassWindow parse(String text) {
    int dots = text.indexOf("..");
    try {
      if (dots > 0) {
        return new MassWindow(
            Mass.ofGrams(text.substring(0, dots)), Mass.ofGrams(text.substring(dots + 2)));
      }
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(LotSays.WINDOW_MASS, Elsewhere.words(e));
    }
    throw new Problem.WrongUse(LotSays.NO_WINDOW, text);
  }

  /**
   * Median ± 5 robust standard deviations of the masses seen so far, and not less than ± 25 % of
   * the median before twenty are seen; wider, up to ± 40 %, by what the deviation of so few is
   * uncertain; empty with fewer than eight.
   */
  public static Optional<MassWindow> around(Collection<Mass> seen) {
    if (seen.size() < FEWEST) {
      return Optional.empty();
    }
    Robust robust = Robust.of(seen.stream().mapToDouble(Mass::milligrams).toArray());
    double floor = seen.size() < SURE ? UNSURE_DEVIATION : LEAST_DEVIATION;
    double median = Math.abs(robust.median());
    double known = DEVIATIONS * Math.max(robust.deviation(), floor * median);
    double unsure = 1 + DEVIATION_ERROR / Math.sqrt(seen.size());
    double most = Math.min(DEVIATIONS * robust.deviation() * unsure, MOST_UNSURE * median);
    double half = Math.max(known, most);
    return Optional.of(
        new MassWindow(
            Mass.ofMilligrams(Math.max(0, robust.median() - half)),
            Mass.ofMilligrams(robust.median() + half)));
  }

  /** True for a mass within. */
  public boolean holds(Mass mass) {
    return mass.compareTo(least) >= 0 && mass.compareTo(most) <= 0;
  }

  /** As {@link #parse} reads it. */
  public String text() {
    return least.toGrams() + ".." + most.toGrams();
  }
}
