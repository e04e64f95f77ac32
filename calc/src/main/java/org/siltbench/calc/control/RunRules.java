package org.siltbench.calc.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.siltbench.calc.stats.Checked;

/** Looks along a series for values that break run rules. */
public final class RunRules {

  private RunRules() {}

  /**
   * A rule broken.
   *
   * @param place index of the value that completes the pattern, from 0
   * @param rule the rule
   */
  public record Signal(int place, RunRule rule) {}

  /**
   * All signals, by place and then by rule. "Beyond" is strict: a value on a line is inside. A
   * deviation of zero makes every value off the centre beyond all lines.
   *
   * @param values in the order of time, finite; none gives no signal
   * @param centre the centre line, finite
   * @param sigma the chart's deviation, zero or more
   * @param rules which rules to look for
   * @throws IllegalArgumentException if a number is out of range
   */
  public static List<Signal> signals(
      double[] values, double centre, double sigma, Set<RunRule> rules) {
    double[] x = Checked.finite(values, 0, "values");
    Checked.finite(centre, "centre");
    Checked.notNegative(sigma, "deviation");
    List<Signal> out = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      for (RunRule rule : RunRule.values()) {
        if (rules.contains(rule) && rule.brokenAt(i, x, centre, sigma)) {
          out.add(new Signal(i, rule));
        }
      }
    }
    return List.copyOf(out);
  }
}
