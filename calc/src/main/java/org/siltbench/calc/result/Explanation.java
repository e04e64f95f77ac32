package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.uncertainty.Budget;

/** How a result came about, in sentences that a sceptic can follow with a pocket calculator. */
public final class Explanation {

  /** Shares that agree to so many parts of one are alike: the budget's order decides. */
  private static final double ALIKE = 1e9;

  private static final int LARGEST = 3;

  private Explanation() {}

  /**
   * The sentences, in the order of the calculation: masses, blank, constant mass, concentration,
   * uncertainty with its largest parts, what the flags mean.
   *
   * @param row a result
   * @param method the method it was calculated under
   */
  public static List<String> of(ResultRow row, Method method) {
    List<String> lines = new ArrayList<>();
    lines.add(masses(row));
    if (row.blankMg() != 0) {
      lines.add("Blank subtracted from each filter: " + figure(row.blankMg()) + " mg.");
    }
    lines.add("Constant mass: " + row.constant().why());
    Concentration c = row.concentration();
    if (c != null) {
      lines.add(concentration(row, c));
      lines.add(uncertainty(c));
      lines.add(largest(c.budget()));
      lines.add(reported(row, c, method));
    }
    for (Flag flag : row.flags()) {
      lines.add(flag.word() + ": " + flag.means());
    }
    return lines;
  }

  private static String masses(ResultRow row) {
    return "Residue: "
        + row.counted().toGrams()
        + " g - "
        + row.counted().minus(row.residue()).toGrams()
        + " g = "
        + row.residue().toMilligrams()
        + " mg.";
  }

  private static String concentration(ResultRow row, Concentration c) {
    String whose =
        row.flags().contains(Flag.SEVERAL_FILTERS) ? " over all filters of the sample" : "";
    return "Concentration: "
        + figure(c.mgPerL() * c.litres())
        + " mg / "
        + figure(c.litres())
        + " L = "
        + figure(c.mgPerL())
        + " mg/L"
        + whose
        + ".";
  }

  private static String uncertainty(Concentration c) {
    Interval interval = c.interval();
    String half =
        interval == null
            ? "U = " + figure(c.k()) + " x u = " + figure(c.expanded()) + " mg/L"
            : String.format(
                Locale.ROOT,
                "by distributions the result lies from %s to %s mg/L",
                figure(interval.low()),
                figure(interval.high()));
    String dof = Double.isInfinite(c.dof()) ? "" : ", " + figure(c.dof()) + " degrees of freedom";
    return "Uncertainty: u = "
        + figure(c.u())
        + " mg/L"
        + dof
        + "; "
        + half
        + " ("
        + percent(c.probability())
        + ").";
  }

  private static String largest(Budget budget) {
    double[] shares = budget.shares();
    List<String> parts =
        IntStream.range(0, shares.length)
            .boxed()
            .sorted(Comparator.comparingLong(i -> -Math.round(shares[i] * ALIKE)))
            .limit(LARGEST)
            .map(i -> budget.parts().get(i).name() + " " + percent(shares[i]))
            .toList();
    return parts.isEmpty()
        ? "No part of the uncertainty is known."
        : "Largest parts: " + String.join(", ", parts) + ".";
  }

  private static String reported(ResultRow row, Concentration c, Method method) {
    return "Reported: "
        + ForPeople.result(c.mgPerL(), method.report().digits(), row.limitMgPerL())
        + " mg/L; the reporting limit of this volume is "
        + ForPeople.limit(row.limitMgPerL())
        + " mg/L.";
  }

  /** Five significant figures, without trailing zeros: enough to follow, not to copy. */
  private static String figure(double value) {
    String text = ForPeople.value(value, 5, 0);
    return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
  }

  private static String percent(double share) {
    return ForPeople.value(100 * share, 3, 1) + " %";
  }
}
