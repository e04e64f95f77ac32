package org.siltbench.calc.highconc;

import org.siltbench.calc.stats.Checked;

/**
 * The revised conversion table from ppm to mg/L in steps of 0.01, in use from water year 1972 (USGS
 * OSW technical memorandum 93.21), 0 to 83 700 ppm. For agreement with records made by the table;
 * the equation ({@link MassRatio}) is primary. The older table of TWRI 5-C1 (1969) has other steps
 * and is not offered.
 */
public final class RevisedTable {

  /** The last mass ratio of the table as held here, ppm. */
  public static final double LAST = 83_700;

  /** First mass ratio of each step after 1.00; the printed rows are 100 apart. */
  private static final double[] STARTS = {8_000, 23_800, 39_200, 54_400, 69_300};

  private RevisedTable() {}

  /**
   * The table's factor. Between the printed rows (as 7 950 and 8 000) the lower row holds up to the
   * next one.
   *
   * @param partsPerMillion [0, 83 700]
   * @throws IllegalArgumentException if beyond the table: use the equation
   */
  public static double factor(double partsPerMillion) {
    Checked.within(partsPerMillion, 0, LAST, "mass ratio in ppm (by table; else the equation)");
    int step = 0;
    for (double start : STARTS) {
      step += partsPerMillion >= start ? 1 : 0;
    }
    return (100 + step) / 100.0;
  }

  /**
   * mg/L by the table.
   *
   * @param partsPerMillion [0, 83 700]
   * @throws IllegalArgumentException if beyond the table
   */
  public static double toMilligramsPerLitre(double partsPerMillion) {
    return partsPerMillion * factor(partsPerMillion);
  }
}
