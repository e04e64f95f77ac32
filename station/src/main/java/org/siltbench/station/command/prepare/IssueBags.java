package org.siltbench.station.command.prepare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.issue.Issue;
import org.siltbench.station.work.scan.BagScan;
import picocli.CommandLine.Option;

/** {@code issue}. */
final class IssueBags implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(names = "--trip", required = true, paramLabel = "NAME", description = "the trip")
  private String trip = "";

  @Option(
      names = "--filters",
      split = ",",
      paramLabel = "ID",
      description = "these only, parted by commas; default: all that are ready (or still out)")
  private List<String> filters = List.of();

  @Option(names = "--back", description = "take unused bags back to stock")
  private boolean back;

  @Option(names = "--to", paramLabel = "WHO", description = "who takes them")
  private @Nullable String to;

  @Option(names = "--out", paramLabel = "TIME", description = "when, if not now")
  private @Nullable String out;

  @Option(names = "--seals", paramLabel = "TEXT", description = "seal numbers")
  private @Nullable String seals;

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    List<String> ids = filters.stream().map(id -> BagScan.of(id).filter().text()).toList();
    Issue issue = new Issue(bench, state, trip);
    Entry entry =
        back
            ? issue.back(ids)
            : issue.out(
                session.methods().inForce(bench.register(), state.method()),
                ids,
                to,
                Times.past(out, session.clock()),
                seals);
    List<String> moved = Fields.of(entry).filters("filters");
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", state.name());
    document.put("trip", trip);
    document.put("direction", back ? "back" : "out");
    document.put("filters", moved);
    session.document(document);
    session.fact(
        moved.size()
            + (back ? " bags back from trip " : " bags out on trip ")
            + trip
            + ": "
            + String.join(" ", moved));
    return 0;
  }
}
