package org.siltbench.station.work.results;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.control.IndividualsChart;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.RowRole;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.chart.TimeChart;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/** The pictures of a batch: the same marks on paper and on the screen. */
public final class Charts {

  private static final int ENOUGH_FOR_LIMITS = 8;

  private Charts() {}

  /** Concentration over time, one series a site; null where no sample has both. */
  public static @Nullable TimeChart concentration(BatchResults results) {
    Map<String, Map<String, TimeChart.Point>> sites = new LinkedHashMap<>();
    for (FilterResult row : results.rows()) {
      point(row)
          .ifPresent(
              point ->
                  sites
                      .computeIfAbsent(site(row), k -> new LinkedHashMap<>())
                      .putIfAbsent(row.note("sample"), point));
    }
    List<TimeChart.Series> series = new ArrayList<>();
    sites.forEach(
        (site, points) -> {
          List<TimeChart.Point> sorted = new ArrayList<>(points.values());
          sorted.sort(java.util.Comparator.comparing(TimeChart.Point::at));
          series.add(new TimeChart.Series(site, sorted));
        });
    return series.isEmpty()
        ? null
        : new TimeChart(results.method().parameter().title(), "mg/L", series);
  }

  private static String site(FilterResult row) {
    String site = row.note("site");
    return site.isEmpty() ? "no site given" : site;
  }

  private static Optional<TimeChart.Point> point(FilterResult row) {
    Concentration c = row.result().concentration();
    Optional<OffsetDateTime> at =
        row.state().record().flatMap(record -> record.fields().time("collected"));
    if (c == null || at.isEmpty() || row.result().input().role() != RowRole.SAMPLE) {
      return Optional.empty();
    }
    boolean below = c.mgPerL() < row.result().limitMgPerL();
    return Optional.of(new TimeChart.Point(at.get(), c.mgPerL(), c.expanded(), below));
  }

  /** The control chart of a balance's checks; null without checks. */
  public static @Nullable ControlChart checks(List<Check> checks) {
    List<ControlChart.Point> points = new ArrayList<>();
    double limit = 0;
    for (Check check : checks) {
      points.add(new ControlChart.Point(check.at(), check.fields().number("error_mg", 0)));
      limit = check.fields().number("limit_mg", 0);
    }
    if (points.isEmpty()) {
      return null;
    }
    double[] errors = points.stream().mapToDouble(ControlChart.Point::value).toArray();
    if (errors.length < ENOUGH_FOR_LIMITS) {
      return new ControlChart(title(checks), "mg", 0, null, null, limit, points);
    }
    IndividualsChart chart = IndividualsChart.of(errors);
    return new ControlChart(
        title(checks), "mg", chart.centre(), chart.lower(), chart.upper(), limit, points);
  }

  private static String title(List<Check> checks) {
    List<String> weights =
        checks.stream().map(check -> check.fields().text("weight")).distinct().toList();
    return "Error of check weight " + String.join(", ", weights);
  }
}
