package org.siltbench.calc.advice;

import java.time.Duration;
import org.siltbench.calc.stats.Checked;

/**
 * A plan for the field.
 *
 * @param every time between samples at a site, above zero
 * @param length how long each site is sampled, zero (one sample) or more
 * @param sites how many sites, at least 1
 * @param trips how many trips, at least 1: one trip blank each
 * @param fieldBlankPercent field blanks for each 100 samples, [0, 100]
 * @param duplicatePercent duplicates for each 100 samples, [0, 100]; SM 2540 D asks for 10
 * @param sparePercent spares for each 100 filters that go out, [0, 100]
 * @param controlFilters filters that stay in the lab, zero or more; 2 or 3 a lot
 * @param samplesPerMethodBlank one method blank for each begun so many samples, at least 1; SM 2020
 *     asks for one per 20 or fewer
 */
public record SamplingPlan(
    Duration every,
    Duration length,
    int sites,
    int trips,
    double fieldBlankPercent,
    double duplicatePercent,
    double sparePercent,
    int controlFilters,
    int samplesPerMethodBlank) {

  /** More filters than this for one plan is a typing mistake. */
  public static final long MOST_SAMPLES = 100_000;

  /**
   * Checks the plan.
   *
   * @throws IllegalArgumentException if a number is out of range or the plan asks for more than 100
   *     000 samples
   */
  public SamplingPlan {
    if (every.isZero() || every.isNegative()) {
      throw new IllegalArgumentException("time between samples must be above zero: " + every);
    }
    if (length.isNegative()) {
      throw new IllegalArgumentException("length must not be below zero: " + length);
    }
    Checked.atLeast(sites, 1, "number of sites");
    Checked.atLeast(trips, 1, "number of trips");
    Checked.within(fieldBlankPercent, 0, 100, "field blanks in %");
    Checked.within(duplicatePercent, 0, 100, "duplicates in %");
    Checked.within(sparePercent, 0, 100, "spares in %");
    Checked.atLeast(controlFilters, 0, "control filters");
    Checked.atLeast(samplesPerMethodBlank, 1, "samples per method blank");
    if ((length.dividedBy(every) + 1) * sites > MOST_SAMPLES) {
      throw new IllegalArgumentException("more than " + MOST_SAMPLES + " samples in one plan");
    }
  }

  /**
   * The usual plan: one trip, 5 % field blanks, 10 % duplicates, 10 % spares, 3 control filters, a
   * method blank per 20. The shares of blanks and spares are common practice.
   */
  static SamplingPlan usual(Duration every, Duration length, int sites) {
    return new SamplingPlan(every, length, sites, 1, 5, 10, 10, 3, 20);
  }

  /** Samples at one site: one at the begin and one at each full step, the end included. */
  public int samplesPerSite() {
    return (int) length.dividedBy(every) + 1;
  }

  /** The filters to prepare, by role; shares are rounded up. */
  public FilterCount filters() {
    int samples = samplesPerSite() * sites;
    int duplicates = share(samples, duplicatePercent);
    int fieldBlanks = share(samples, fieldBlankPercent);
    int out = samples + duplicates + fieldBlanks + trips;
    int methodBlanks = (samples + duplicates + samplesPerMethodBlank - 1) / samplesPerMethodBlank;
    return new FilterCount(
        samples,
        duplicates,
        fieldBlanks,
        trips,
        methodBlanks,
        controlFilters,
        share(out, sparePercent));
  }

  private static int share(int of, double percent) {
    return (int) Math.ceil(of * percent / 100 - 1e-9);
  }
}
