package org.siltbench.station.life;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantRule;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.method.Constancy;
import org.siltbench.calc.quantity.Mass;

/**
 * The constant-mass rule as a weighing carries it, so that its verdict follows a correction of any
 * mass before it without asking the method again.
 */
public final class VerdictRule {

  private VerdictRule() {}

  /** The method's rule for post-weighings as data of an entry; empty where it has none. */
  public static Map<String, @Nullable Object> data(Constancy constancy) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    ConstantRule rule = constancy.postRule();
    if (rule == null) {
      return out;
    }
    Mass absolute = rule.absolute();
    if (absolute != null) {
      out.put("limit_g", absolute.toGrams());
    }
    BigDecimal percent = rule.percent();
    if (percent != null) {
      out.put("percent", percent.toPlainString());
    }
    out.put("base", rule.base() == ConstantRule.Base.RESIDUE ? "residue" : "filter-and-residue");
    out.put("direction", rule.direction() == ConstantRule.Direction.LOSS ? "loss" : "both");
    out.put("strict", rule.strict());
    out.put("coarsest_g", constancy.coarsest().toGrams());
    return out;
  }

  /** The rule of an entry; empty where it carries none or makes no sense. */
  static Optional<ConstantRule> rule(Fields data) {
    try {
      return data.object("rule")
          .map(
              rule ->
                  new ConstantRule(
                      rule.mass("limit_g").orElse(null),
                      rule.decimal("percent").orElse(null),
                      rule.text("base").equals("residue")
                          ? ConstantRule.Base.RESIDUE
                          : ConstantRule.Base.FILTER_AND_RESIDUE,
                      rule.text("direction").equals("loss")
                          ? ConstantRule.Direction.LOSS
                          : ConstantRule.Direction.BOTH,
                      rule.flag("strict")));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The verdict over a series that ends with the entry's own mass. */
  static String verdict(
      ConstantRule rule, Fields data, List<Weighed> series, Optional<Weighed> pre) {
    List<Mass> masses = series.stream().map(Weighed::mass).toList();
    Mass coarsest = data.object("rule").flatMap(r -> r.mass("coarsest_g")).orElse(null);
    return ConstantVerdict.of(
            rule, masses, pre.map(Weighed::mass).orElse(null), coarsestStep(series), coarsest)
        .kind()
        .word();
  }

  /** The coarser step of the last two masses; null where neither is known. */
  public static @Nullable Mass coarsestStep(List<Weighed> series) {
    double step = 0;
    for (Weighed weighed : series.subList(Math.max(0, series.size() - 2), series.size())) {
      step = Math.max(step, weighed.resolutionMg());
    }
    return step > 0 ? Mass.ofMilligrams(step) : null;
  }
}
