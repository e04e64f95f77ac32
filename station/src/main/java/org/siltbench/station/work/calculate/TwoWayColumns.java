package org.siltbench.station.work.calculate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.calc.result.TwoWays;

/** The interval by distributions beside the first order, and whether the two agree. */
public final class TwoWayColumns {

  static final List<String> NAMES = List.of("low_mg_l", "high_mg_l", "first_order");

  private TwoWayColumns() {}

  /** For JSON: what does not exist is null. */
  public static @Nullable Map<String, @Nullable Object> exact(ResultRow row) {
    Concentration c = row.concentration();
    if (c == null) {
      return null;
    }
    TwoWays both = c.bothWays(row.seedName());
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("trials", both.trials());
    out.put("low_mg_l", both.interval().low());
    out.put("high_mg_l", both.interval().high());
    out.put("first_order_low_mg_l", c.mgPerL() - c.k() * c.u());
    out.put("first_order_high_mg_l", c.mgPerL() + c.k() * c.u());
    out.put("tolerance_mg_l", both.comparison().tolerance());
    out.put("agree", both.comparison().validated());
    return out;
  }

  static List<String> rounded(ResultRow row, int digits) {
    Concentration c = row.concentration();
    if (c == null) {
      return List.of("", "", "");
    }
    TwoWays both = c.bothWays(row.seedName());
    return List.of(
        ForPeople.value(both.interval().low(), digits + 1, 0),
        ForPeople.value(both.interval().high(), digits + 1, 0),
        both.comparison().validated() ? "agrees" : "differs");
  }
}
