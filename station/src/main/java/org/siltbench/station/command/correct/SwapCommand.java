package org.siltbench.station.command.correct;

import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.correct.Swap;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code swap}. */
final class SwapCommand implements Task {

  @Parameters(index = "0", paramLabel = "ID", description = "one filter")
  private String first = "";

  @Parameters(index = "1", paramLabel = "ID", description = "the other")
  private String second = "";

  @Option(
      names = "--what",
      paramLabel = "WORD",
      description =
          "post (drying and weighing after the field), notes (field notes) or pre (clean masses);"
              + " default: ${DEFAULT-VALUE}")
  private String what = "post";

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "why")
  private String reason = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    String a = BagScan.of(first).filter().text();
    String b = BagScan.of(second).filter().text();
    Swap swap = new Swap(a, b, Swap.What.of(what), reason);
    new ImpactText(session).tell(Amend.of(swap).record(bench, session.methods()));
    return 0;
  }
}
