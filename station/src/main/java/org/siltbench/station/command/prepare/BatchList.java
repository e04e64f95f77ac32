package org.siltbench.station.command.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import picocli.CommandLine.Option;

/** {@code batch list}. */
final class BatchList implements Task {

  @Option(names = "--batch", paramLabel = "NAME", description = "this batch only")
  private @Nullable String only;

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    List<BatchState> batches =
        only == null
            ? Batches.all(bench.register())
            : List.of(Batches.require(bench.register(), only));
    List<Map<String, Object>> document = new ArrayList<>();
    for (BatchState batch : batches) {
      if (session.json()) {
        document.add(BatchText.document(bench, batch));
      } else {
        BatchText.print(session, bench, batch);
      }
    }
    session.document(document);
    if (batches.isEmpty()) {
      session.message("There is no batch yet; siltbench batch new makes one.");
    }
    return 0;
  }
}
