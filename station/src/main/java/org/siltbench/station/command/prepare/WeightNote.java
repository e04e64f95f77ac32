package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.equip.WeightRecord;
import picocli.CommandLine.Option;

/** {@code weight}. */
final class WeightNote implements Task {

  @Option(names = "--name", required = true, paramLabel = "NAME", description = "its name")
  private String name = "";

  @Option(names = "--nominal", required = true, paramLabel = "G", description = "nominal mass, g")
  private String nominal = "";

  @Option(
      names = "--certified",
      required = true,
      paramLabel = "G",
      description = "conventional mass on its certificate, g")
  private String certified = "";

  @Option(
      names = "--U",
      required = true,
      paramLabel = "MG",
      description = "expanded uncertainty on its certificate, mg")
  private BigDecimal expanded = BigDecimal.ZERO;

  @Option(
      names = "--k",
      paramLabel = "K",
      description = "the certificate's coverage factor; default: ${DEFAULT-VALUE}")
  private BigDecimal k = BigDecimal.valueOf(2);

  @Option(names = "--certificate", paramLabel = "TEXT", description = "the certificate's number")
  private @Nullable String certificate;

  @Option(names = "--due", paramLabel = "DATE", description = "when it must be calibrated again")
  private @Nullable String due;

  @Override
  public int run(Session session) {
    WeightRecord record =
        new WeightRecord(
            name, grams(nominal), grams(certified), expanded, k, certificate, Dates.day(due));
    record.record(session.bench());
    session.document(Map.of("weight", record.name()));
    session.fact("weight " + record.name());
    return 0;
  }

  private static Mass grams(String text) {
    try {
      return Mass.ofGrams(text);
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(e.getMessage() + ".", "Write grams, as 0.1 or 20.000012.");
    }
  }
}
