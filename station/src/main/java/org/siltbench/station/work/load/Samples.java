package org.siltbench.station.work.load;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.RowRole;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;
import org.siltbench.station.work.StatedTimes;
import org.siltbench.station.work.results.BatchResults;
import org.siltbench.station.work.results.BatchResults.FilterResult;

/**
 * The concentrations a load is made of, one a sample.
 *
 * @param all in the order of their source
 * @param left samples without a time or a concentration
 */
public record Samples(List<Sampled> all, int left) {

  private static final Words TIME = Said.of(LoadSays.A_TIME);

  /** Copies the list. */
  public Samples {
    all = List.copyOf(all);
  }

  /** Those of a batch: each sample once, whatever the number of its filters. */
  public static Samples of(BatchResults results) {
    Map<String, Sampled> out = new LinkedHashMap<>();
    int left = 0;
    for (FilterResult row : results.rows()) {
      Concentration c = row.result().concentration();
      Optional<OffsetDateTime> at =
          row.state().record().flatMap(record -> record.fields().time("collected"));
      if (row.result().input().role() != RowRole.SAMPLE) {
        continue;
      }
      if (c == null || at.isEmpty() || row.result().isStopped()) {
        left++;
        continue;
      }
      String name = row.note("sample").isEmpty() ? row.state().id() : row.note("sample");
      out.putIfAbsent(
          name,
          new Sampled(
              row.note("site"), name, at.get().toInstant(), c.mgPerL(), c.u(), row.note("pair")));
    }
    return new Samples(List.copyOf(out.values()), left);
  }

  /**
   * Those of a table with {@code time} and {@code conc_mg_l}, optionally {@code site, sample,
   * filter, role, pair, u_mg_l}: what {@code calc} writes.
   *
   * @throws Problem.WrongUse if a cell makes no sense, with its line and column
   */
  public static Samples read(Path file, Clock clock) throws IOException {
    try (Table table = Table.open(file)) {
      int time = table.require("time");
      int value = table.require("conc_mg_l");
      Map<String, Sampled> out = new LinkedHashMap<>();
      int left = 0;
      while (table.hasNext()) {
        Row row = table.next();
        String role = row.text("role");
        if (row.blank() || !(role.isEmpty() || role.equalsIgnoreCase("sample"))) {
          continue;
        }
        if (row.text(value).isEmpty() || row.text(time).isEmpty()) {
          left++;
          continue;
        }
        Sampled sampled = sampled(table, row, time, value, clock);
        out.putIfAbsent(sampled.sample(), sampled);
      }
      return new Samples(List.copyOf(out.values()), left);
    }
  }

  private static Sampled sampled(Table table, Row row, int time, int value, Clock clock) {
    OffsetDateTime at =
        StatedTimes.parse(row.text(time), clock).orElseThrow(() -> row.wrong(time, TIME));
    double u =
        row.decimal(table.column("u_mg_l"), Said.of(LoadSays.A_UNCERTAINTY), "0", "1e9")
            .map(Number::doubleValue)
            .orElse(Double.NaN);
    return new Sampled(
        row.text("site"),
        name(row),
        at.toInstant(),
        row.decimal(value, Said.of(LoadSays.A_CONCENTRATION), "-1e9", "1e9")
            .orElseThrow()
            .doubleValue(),
        u,
        row.text("pair"));
  }

  private static String name(Row row) {
    List<String> names = new ArrayList<>(List.of(row.text("sample"), row.text("filter")));
    names.removeIf(String::isEmpty);
    return names.isEmpty() ? "line " + row.line() : names.get(0);
  }
}
