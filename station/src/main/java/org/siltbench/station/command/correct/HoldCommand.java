package org.siltbench.station.command.correct;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.correct.Hold;
import org.siltbench.station.work.results.Impact;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Option;

/** {@code hold}. */
final class HoldCommand implements Task {

  @Option(names = "--filters", split = ",", paramLabel = "ID", description = "whose results")
  private List<String> filters = List.of();

  @Option(names = "--batch", paramLabel = "NAME", description = "all results of a batch")
  private @Nullable String batch;

  @Option(names = "--lift", description = "set them free again")
  private boolean lift;

  @Option(names = "--reason", required = true, paramLabel = "TEXT", description = "why")
  private String reason = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    List<String> ids = new ArrayList<>();
    filters.forEach(id -> ids.add(BagScan.of(id).filter().text()));
    if (batch != null) {
      String code = Batches.require(bench.register(), batch).code();
      Filters.ofBatch(bench.register(), code).stream()
          .filter(this::concerned)
          .map(FilterState::id)
          .forEach(ids::add);
    }
    Hold hold = new Hold(ids, lift, reason);
    new ImpactText(session).tell(new Impact.Outcome(hold.record(bench), List.of()));
    return 0;
  }

  private boolean concerned(FilterState state) {
    return state.status() != Status.REJECTED && (!lift || !state.holds().isEmpty());
  }
}
