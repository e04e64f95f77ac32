package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
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
    record.record(session.bench());
    session.document(Map.of("noted", true));
    session.fact("room noted");
    return 0;
  }
}
