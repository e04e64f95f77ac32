package org.siltbench.station.command.results;

import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Fields;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.release.Release;
import picocli.CommandLine.Option;

/** {@code release}. */
final class ReleaseCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(
      names = "--report",
      paramLabel = "NUMBER",
      description = "the report's number; default: the batch's next one")
  private String report = "";

  @Option(
      names = "--partial",
      description = "filters without a result follow later, in an amended report")
  private boolean partial;

  @Option(
      names = "--accept",
      paramLabel = "REASON",
      description = "release what a rule would hold back, with a reason that the report prints")
  private String accept = "";

  @Override
  public int run(Session session) {
    Bench bench = session.existingBench();
    String code = Batches.require(bench.register(), batch).code();
    Entry entry =
        new Release(code, report, partial, accept.strip()).record(bench, session.methods());
    Fields data = Fields.of(entry);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("batch", batch);
    document.put("report", data.text("report"));
    document.put("replaces", data.text("replaces"));
    document.put("filters", data.filters("filters"));
    document.put("analyst", data.text("analyst"));
    document.put("approver", data.text("approver"));
    session.document(document);
    session.fact(
        "report "
            + data.text("report")
            + data.find("replaces").map(old -> " replaces " + old).orElse("")
            + ": "
            + data.filters("filters").size()
            + " filters");
    if (data.text("analyst").equals(data.text("approver"))) {
      session.message("Analyst and approver are the same person.");
    }
    return 0;
  }
}
