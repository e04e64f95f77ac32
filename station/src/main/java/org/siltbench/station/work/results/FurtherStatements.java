package org.siltbench.station.work.results;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.SandAndFines;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.calc.result.Further;
import org.siltbench.calc.result.Ignited;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.calc.result.TwoWays;
import org.siltbench.station.work.calculate.BatchDocument;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/** What a report says in sentences of its further results, limits and both ways of uncertainty. */
final class FurtherStatements {

  private final BatchResults results;
  private final int digits;

  FurtherStatements(BatchResults results) {
    this.results = results;
    this.digits = results.method().report().digits();
  }

  /** Each sample once, in the order of the batch. */
  List<String> all(boolean compared) {
    List<String> out = new ArrayList<>(BatchDocument.sentences(results.report()));
    Set<String> told = new LinkedHashSet<>();
    List<String> differing = new ArrayList<>();
    for (FilterResult row : results.rows()) {
      String name = name(row);
      Concentration c = row.result().concentration();
      if (c != null && row.result().input().role().isWater() && told.add(name)) {
        further(out, name, row.result().further());
        if (compared) {
          compare(differing, name, row.result(), c);
        }
      }
    }
    if (compared) {
      out.add(summary(told.size(), differing.size()));
      out.addAll(differing);
    }
    return out;
  }

  private static String name(FilterResult row) {
    return row.note("sample").isEmpty() ? row.state().id() : row.note("sample");
  }

  private void further(List<String> out, String name, @Nullable Further more) {
    if (more == null) {
      return;
    }
    Ignited ignited = more.ignited();
    if (ignited != null) {
      out.add(
          String.format(
              Locale.ROOT,
              "%s: volatile suspended solids %s (u %s), fixed %s (u %s) mg/L.",
              name,
              figure(ignited.volatileMgPerL()),
              ForPeople.uncertainty(ignited.volatileU()),
              figure(ignited.fixedMgPerL()),
              ForPeople.uncertainty(ignited.fixedU())));
    }
    SandAndFines parts = more.sandAndFines();
    if (parts != null) {
      out.add(
          String.format(
              Locale.ROOT,
              "%s: sand %s mg/L, fines %s mg/L; %s %% sand.",
              name,
              figure(parts.sand()),
              figure(parts.fines()),
              ForPeople.value(parts.sandPercent(), 2, 0)));
    }
  }

  private String figure(double value) {
    return ForPeople.value(value, digits, 0);
  }

  private void compare(List<String> differing, String name, ResultRow row, Concentration c) {
    TwoWays both = c.bothWays(row.seedName());
    if (!both.comparison().validated()) {
      differing.add(
          String.format(
              Locale.ROOT,
              "%s: first order %s to %s, by distributions %s to %s mg/L.",
              name,
              figure(c.mgPerL() - c.k() * c.u()),
              figure(c.mgPerL() + c.k() * c.u()),
              figure(both.interval().low()),
              figure(both.interval().high())));
    }
  }

  private static String summary(int samples, int differing) {
    return "Uncertainty both ways (first order and 100 000 trials each): they agree to the first"
        + " digit of u for "
        + (samples - differing)
        + " of "
        + samples
        + " samples.";
  }
}
