package org.siltbench.station.command.prepare;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.issue.Custody;
import picocli.CommandLine.Option;

/** {@code custody}. */
final class CustodyLine implements Task {

  @Option(names = "--trip", required = true, paramLabel = "NAME", description = "the trip")
  private String trip = "";

  @Option(names = "--relinquished", required = true, paramLabel = "WHO", description = "who gave")
  private String relinquished = "";

  @Option(names = "--received", required = true, paramLabel = "WHO", description = "who took")
  private String received = "";

  @Option(names = "--bags", required = true, paramLabel = "N", description = "bags counted")
  private int bags;

  @Option(names = "--seals", paramLabel = "TEXT", description = "seals and their state")
  private @Nullable String seals;

  @Option(names = "--temperature", paramLabel = "C", description = "in the cool box, °C")
  private @Nullable BigDecimal temperature;

  @Option(names = "--at", paramLabel = "TIME", description = "when, if not now")
  private @Nullable String at;

  @Override
  public int run(Session session) {
    new Custody(
            trip, relinquished, received, Times.past(at, session.clock()), bags, seals, temperature)
        .record(session.existingBench());
    session.document(Map.of("trip", trip, "bags", bags));
    session.fact(bags + " bags from " + relinquished + " to " + received);
    return 0;
  }
}
