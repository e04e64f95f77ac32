package org.siltbench.station.command.calculate;

import java.io.IOException;
import java.nio.file.Path;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code limits}. */
final class LimitsCommand implements Task {

  @Parameters(
      index = "0",
      paramLabel = "FILE.csv",
      description = "columns kind (spike or blank) and result, or given and found")
  private Path file = Path.of("");

  @Option(
      names = "--repeats",
      paramLabel = "K",
      description =
          "given and found: how many measurements a result is the mean of; default:"
              + " ${DEFAULT-VALUE}")
  private int repeats = 1;

  @Option(
      names = "--alpha",
      paramLabel = "P",
      description = "given and found: probability of a false detection; default: ${DEFAULT-VALUE}")
  private double alpha = 0.05;

  @Option(
      names = "--beta",
      paramLabel = "P",
      description = "given and found: probability of a miss; default: ${DEFAULT-VALUE}")
  private double beta = 0.05;

  @Override
  public int run(Session session) throws IOException {
    LimitReport report = LimitReport.of(LimitTable.read(file), repeats, alpha, beta);
    session.document(report.document());
    report.lines().forEach(line -> session.fact(line + '.'));
    return 0;
  }
}
