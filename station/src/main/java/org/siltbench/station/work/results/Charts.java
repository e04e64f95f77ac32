package org.siltbench.station.work.results;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.RowRole;
import org.siltbench.labels.chart.TimeChart;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/** The pictures of a batch. */
final class Charts {

  private Charts() {}

  /** Concentration over time, one series a site; null where no sample has both. */
  static @Nullable TimeChart concentration(BatchResults results) {
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
        : new TimeChart(results.method().parameter().with(), "mg/L", series);
  }

  private static String site(FilterResult row) {
    return row.note("site");
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
}
