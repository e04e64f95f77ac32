package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.advice.LeastNetSample;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.equip.BalanceRecord;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code balance describe}. */
final class BalanceDescribe implements Task {

  private static final double MG_PER_G = 1000;

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
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("balance", record.name());
    session.fact("balance " + record.name());
    if (resolution != null || repeatability != null) {
      tell(session, document);
    }
    session.document(document);
    return 0;
  }

  private void tell(Session session, Map<String, Object> document) {
    double step = resolution == null ? 0 : resolution.doubleValue() * MG_PER_G;
    double deviation = repeatability == null ? 0 : repeatability.doubleValue();
    double least = LeastNetSample.milligrams(deviation, step);
    document.put("least_net_mg", least);
    session.fact(
        "Residues under "
            + ForPeople.value(least, 2, 0)
            + " mg are known to worse than 0.1 % (k = 2) on it; that blocks nothing, each result"
            + " tells its own uncertainty.");
  }
}
