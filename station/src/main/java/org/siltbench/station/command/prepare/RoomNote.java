package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.air.BuoyancyChange;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.equip.RoomAir;
import org.siltbench.station.work.equip.RoomRecord;
import picocli.CommandLine.Option;

/** {@code room}. */
final class RoomNote implements Task {

  @Option(names = "--temperature", paramLabel = "C", description = "temperature, °C")
  private @Nullable BigDecimal temperature;

  @Option(names = "--pressure", paramLabel = "HPA", description = "air pressure, hPa")
  private @Nullable BigDecimal pressure;

  @Option(names = "--humidity", paramLabel = "PCT", description = "relative humidity, %%")
  private @Nullable BigDecimal humidity;

  @Option(names = "--at", paramLabel = "TIME", description = "when, if not now")
  private @Nullable String at;

  @Override
  public int run(Session session) {
    RoomRecord record =
        new RoomRecord(temperature, pressure, humidity, Times.past(at, session.clock()));
    Bench bench = session.bench();
    record.record(bench);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("noted", true);
    session.fact("room noted");
    RoomAir room = RoomAir.of(bench.register(), bench.code());
    if (temperature != null && pressure != null) {
      room.last().ifPresent(noted -> tell(session, document, noted));
      room.sinceTheNoteBefore().ifPresent(change -> tell(session, document, change));
    }
    session.document(document);
    return 0;
  }

  private static void tell(Session session, Map<String, Object> document, RoomAir.Noted noted) {
    double density = noted.density().value();
    document.put("air_kg_m3", density);
    session.fact(String.format(Locale.ROOT, "air density %.4f kg/m³ (CIPM-2007)", density));
  }

  private static void tell(Session session, Map<String, Object> document, BuoyancyChange change) {
    document.put("buoyancy_change_mg", change.correction());
    session.fact(
        String.format(
            Locale.ROOT,
            "since the note before, a glass-fibre filter of 120 mg shows %+.4f mg less for the air",
            change.correction()));
  }
}
