package org.siltbench.calc.blank;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;

/**
 * What a method does with blanks.
 *
 * @param use none, control only, or subtract
 * @param kind the kind that counts for the method; for lot losses see the limit
 * @param minCount how many blanks of that kind an analytical batch needs, 0 or more
 * @param limit the largest size of a single blank's residue, above zero; null for no limit
 * @param limitMgPerL the largest blank as a concentration in mg/L, above zero; null for no limit
 * @param lossMgPerCm2 the largest loss of a lot's filter in mg/cm², above zero; null for no limit
 */
public record BlankRule(
    Use use,
    BlankKind kind,
    int minCount,
    @Nullable Mass limit,
    @Nullable Double limitMgPerL,
    @Nullable Double lossMgPerCm2) {

  /** What blanks are for. */
  public enum Use {
    /** Blanks are not looked at. */
    NONE("none"),
    /** Blanks are judged against their limits, results are not changed. */
    CONTROL_ONLY("control-only"),
    /** The mean blank is subtracted from each filter's residue. */
    SUBTRACT("subtract");

    private final String word;

    Use(String word) {
      this.word = word;
    }

    /** The stable word. */
    public String word() {
      return word;
    }
  }

  /**
   * @throws IllegalArgumentException if a number is out of range
   */
  public BlankRule {
    boolean sound =
        minCount >= 0
            && (limit == null || limit.nanograms() > 0)
            && (limitMgPerL == null || limitMgPerL > 0)
            && (lossMgPerCm2 == null || lossMgPerCm2 > 0);
    if (!sound) {
      throw new IllegalArgumentException("a blank rule has a number out of range");
    }
  }

  /**
   * True when a blank is out of limits: its size reaches or passes a limit, whatever its sign.
   *
   * @param residue post less pre, signed
   * @param mgPerL as a concentration in mg/L, or null where there is no volume
   */
  public boolean isHigh(Mass residue, @Nullable Double mgPerL) {
    boolean heavy = limit != null && residue.abs().compareTo(limit) >= 0;
    boolean dense = limitMgPerL != null && mgPerL != null && Math.abs(mgPerL) >= limitMgPerL;
    return heavy || dense;
  }

  /**
   * How many blanks of the kind so many samples need.
   *
   * @param samples samples in all
   * @param batchSize samples in one analytical batch
   * @return 0 where blanks are not looked at or there is no sample
   */
  public long needed(long samples, int batchSize) {
    long batches = (samples + batchSize - 1) / batchSize;
    return use == Use.NONE ? 0 : batches * minCount;
  }
}
