package org.siltbench.station.command.correct;

import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.correct.Rejection;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code reject}. */
final class RejectCommand implements Task {

  @Parameters(index = "0", paramLabel = "ID", description = "the filter")
  private String id = "";

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "why")
  private String reason = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    Rejection rejection = new Rejection(BagScan.of(id).filter().text(), reason);
    new ImpactText(session).tell(Amend.of(rejection).record(bench, session.methods()));
    return 0;
  }
}
