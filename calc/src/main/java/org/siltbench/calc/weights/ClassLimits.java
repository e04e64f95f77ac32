package org.siltbench.calc.weights;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.siltbench.calc.quantity.Mass;

/**
 * Maximum permissible errors of weights, OIML R 111-1:2004 table 1, 1 mg to 200 g.
 *
 * <p>The table holds for its nominal masses and for nothing between: there is no interpolation. A
 * weight of 150 g has no class limit.
 */
public final class ClassLimits {

  private static final Map<Mass, List<Mass>> TABLE = table();

  private ClassLimits() {}

  /**
   * The maximum permissible error ± on the conventional mass.
   *
   * @param weightClass the class
   * @param nominal one of the table's nominal masses
   * @throws IllegalArgumentException if the table has no such nominal mass
   */
  public static Mass of(WeightClass weightClass, Mass nominal) {
    List<Mass> row = TABLE.get(nominal);
    if (row == null) {
      throw new IllegalArgumentException(
          nominal
              + " is not a nominal mass of OIML R 111-1 table 1 (1, 2, 5 mg … 200 g):"
              + " there is no limit between the nominals");
    }
    return row.get(weightClass.column());
  }

  /** The nominal masses of the table, ascending. */
  public static List<Mass> nominals() {
    return List.copyOf(TABLE.keySet());
  }

  private static Map<Mass, List<Mass>> table() {
    Map<Mass, List<Mass>> t = new TreeMap<>();
    row(t, "1", "0.006", "0.020", "0.06", "0.20");
    row(t, "2", "0.006", "0.020", "0.06", "0.20");
    row(t, "5", "0.006", "0.020", "0.06", "0.20");
    row(t, "10", "0.008", "0.025", "0.08", "0.25");
    row(t, "20", "0.010", "0.03", "0.10", "0.3");
    row(t, "50", "0.012", "0.04", "0.12", "0.4");
    row(t, "100", "0.016", "0.05", "0.16", "0.5");
    row(t, "200", "0.020", "0.06", "0.20", "0.6");
    row(t, "500", "0.025", "0.08", "0.25", "0.8");
    row(t, "1000", "0.03", "0.10", "0.3", "1.0");
    row(t, "2000", "0.04", "0.12", "0.4", "1.2");
    row(t, "5000", "0.05", "0.16", "0.5", "1.6");
    row(t, "10000", "0.06", "0.20", "0.6", "2.0");
    row(t, "20000", "0.08", "0.25", "0.8", "2.5");
    row(t, "50000", "0.10", "0.3", "1.0", "3.0");
    row(t, "100000", "0.16", "0.5", "1.6", "5.0");
    row(t, "200000", "0.3", "1.0", "3.0", "10");
    return t;
  }

  /** One row: nominal and the limits of E2, F1, F2, M1, all in mg. */
  private static void row(
      Map<Mass, List<Mass>> table, String nominal, String e2, String f1, String f2, String m1) {
    table.put(
        Mass.ofMilligrams(nominal),
        List.of(
            Mass.ofMilligrams(e2),
            Mass.ofMilligrams(f1),
            Mass.ofMilligrams(f2),
            Mass.ofMilligrams(m1)));
  }
}
