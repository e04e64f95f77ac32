package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.equip.BalanceRecord;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code balance describe}. */
final class BalanceDescribe implements Task {

  @Option(names = "--name", required = true, paramLabel = "NAME", description = "its name")
  private String name = "";

  @Option(
      names = "--balance",
      paramLabel = "SPEC",
      description = "where it stands; weighings over this link are recorded under its name")
  private @Nullable String spec;

  @Option(names = "--serial", paramLabel = "TEXT", description = "its serial number")
  private @Nullable String serial;

  @Option(names = "--resolution", paramLabel = "G", description = "smallest displayed step, g")
  private @Nullable BigDecimal resolution;

  @Option(names = "--capacity", paramLabel = "G", description = "capacity, g")
  private @Nullable BigDecimal capacity;

  @Option(names = "--calibrated", paramLabel = "DATE", description = "when it was calibrated")
  private @Nullable String calibrated;

  @Option(names = "--due", paramLabel = "DATE", description = "when it must be again")
  private @Nullable String due;

  @Option(
      names = "--u-cert",
      paramLabel = "MG",
      description = "standard uncertainty on its certificate, mg")
  private @Nullable BigDecimal certificate;

  @Option(names = "--linearity", paramLabel = "MG", description = "from the certificate, mg")
  private @Nullable BigDecimal linearity;

  @Option(names = "--eccentricity", paramLabel = "MG", description = "from the certificate, mg")
  private @Nullable BigDecimal eccentricity;

  @Option(names = "--repeatability", paramLabel = "MG", description = "standard deviation, mg")
  private @Nullable BigDecimal repeatability;

  @Override
  public int run(Session session) {
    BalanceRecord record =
        new BalanceRecord(
            name,
            spec == null ? null : BalanceRecord.where(Scale.parse(spec)),
            serial,
            resolution,
            capacity,
            Dates.day(calibrated),
            Dates.day(due),
            certificate,
            linearity,
            eccentricity,
            repeatability);
    record.record(session.bench());
    session.document(Map.of("balance", record.name()));
    session.fact("balance " + record.name());
    return 0;
  }
}
