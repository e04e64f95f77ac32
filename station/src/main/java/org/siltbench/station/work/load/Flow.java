package org.siltbench.station.work.load;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.siltbench.calc.load.LoadUnits;
import org.siltbench.calc.load.Series;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;
import org.siltbench.station.work.StatedTimes;

/**
 * Discharge over time, by site.
 *
 * @param bySite points in m³/s under each site's name in small letters; under the empty name where
 *     the table names no site
 * @param empty lines without a value: they leave a gap where it is too long to be bridged
 */
public record Flow(Map<String, List<Series.Point>> bySite, int empty) {

  private static final Words TIME = Said.of(LoadSays.A_TIME);

  /**
   * Reads a table with {@code time}, {@code q_m3_s} or {@code q_ft3_s}, and optionally {@code
   * site}.
   *
   * @throws Problem.WrongUse if a cell makes no sense, with its line and column
   */
  public static Flow read(Path file, Clock clock) throws IOException {
    try (Table table = Table.open(file)) {
      return new Reading(table, clock).flow();
    }
  }

  /** The site's key: case and blanks around do not matter. */
  static String key(String site) {
    return site.strip().toLowerCase(Locale.ROOT);
  }

  private static final class Reading {
    private final Table table;
    private final Clock clock;
    private final int time;
    private final int flow;
    private final boolean feet;
    private final Map<String, List<Series.Point>> sites = new LinkedHashMap<>();
    private int empty;

    Reading(Table table, Clock clock) {
      this.table = table;
      this.clock = clock;
      this.time = table.require("time");
      this.feet = table.column("q_m3_s") < 0 && table.column("q_ft3_s") >= 0;
      this.flow = table.require(feet ? "q_ft3_s" : "q_m3_s");
      if (!feet && table.column("q_ft3_s") >= 0) {
        throw new Problem.WrongUse(LoadSays.TWO_UNITS, table.file());
      }
    }

    Flow flow() {
      while (table.hasNext()) {
        Row row = table.next();
        if (!row.blank()) {
          take(row);
        }
      }
      if (sites.isEmpty()) {
        throw new Problem.WrongUse(LoadSays.NO_DISCHARGE, table.file());
      }
      return new Flow(sites, empty);
    }

    private void take(Row row) {
      OffsetDateTime at =
          StatedTimes.parse(row.text(time), clock).orElseThrow(() -> row.wrong(time, TIME));
      Optional<String> text = row.decimal(flow, Said.of(LoadSays.A_DISCHARGE));
      if (text.isEmpty()) {
        empty++;
        return;
      }
      double q = Double.parseDouble(text.get());
      sites
          .computeIfAbsent(key(row.text("site")), k -> new ArrayList<>())
          .add(new Series.Point(at.toInstant(), feet ? LoadUnits.cubicMetres(q) : q));
    }
  }
}
