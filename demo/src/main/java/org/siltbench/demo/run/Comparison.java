package org.siltbench.demo.run;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.siltbench.demo.ExactShare;
import org.siltbench.demo.robot.Answer;
import org.siltbench.demo.storm.Faults;
import org.siltbench.demo.storm.Truths;

/**
 * Results against the truth, one a sample. A sample over two filters counts once; samples with a
 * deliberate loss are left out.
 *
 * @param samples how many were compared
 * @param within how many truths lie within the stated expanded uncertainty
 * @param flags the flags of each filter
 */
record Comparison(int samples, int within, Map<String, Set<String>> flags) {

  private static final double TAIL = 0.025;

  static Comparison of(Answer results, Truths truths, Faults faults) {
    int samples = 0;
    int within = 0;
    Map<String, Set<String>> flags = new LinkedHashMap<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Map<?, ?> row : results.rows("rows")) {
      String filter = Answer.text(row, "filter");
      flags.put(filter, Set.of(Answer.text(row, "flags").split(";")));
      boolean counts =
          Answer.text(row, "role").equals("sample")
              && !filter.equals(faults.torn())
              && seen.add(Answer.text(row, "sample"));
      if (counts) {
        samples++;
        double off = number(row, "conc_mg_l") - truths.of(filter).concentration();
        within += Math.abs(off) <= number(row, "U_mg_l") ? 1 : 0;
      }
    }
    return new Comparison(samples, within, flags);
  }

  private static double number(Map<?, ?> row, String field) {
    return Double.parseDouble(Answer.text(row, field));
  }

  /** True if the filter's result carries the flag. */
  boolean has(String filter, String flag) {
    return flags.getOrDefault(filter, Set.of()).contains(flag);
  }

  /** Exact binomial 95 % interval (Clopper and Pearson 1934) of the share within. */
  List<Double> interval() {
    return List.of(ExactShare.low(within, samples, TAIL), ExactShare.high(within, samples, TAIL));
  }
}
