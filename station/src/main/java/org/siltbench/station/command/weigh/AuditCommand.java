package org.siltbench.station.command.weigh;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.audit.AuditRun;
import org.siltbench.station.work.audit.BagAudit;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code audit}. */
final class AuditCommand implements Task {

  @Mixin private BalanceOptions balance = new BalanceOptions();

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(
      names = "--filters",
      split = ",",
      paramLabel = "ID",
      description = "these, parted by commas; default: one bag in ten")
  private List<String> filters = List.of();

  @Option(
      names = "--limit",
      paramLabel = "MG",
      description = "most a mass may differ from the recorded one; default: ${DEFAULT-VALUE}")
  private String limit = "0.5";

  @Override
  public int run(Session session) throws InterruptedException {
    Mass most = Limits.milligrams(limit);
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    Method method = session.methods().inForce(bench.register(), state.method());
    List<String> ids =
        filters.isEmpty()
            ? BagAudit.sample(bench, state)
            : filters.stream().map(id -> BagScan.of(id).filter().text()).toList();
    EventLines lines = new EventLines(session);
    try (Scale scale = balance.open(session, bench, Pans.filters(method), lines)) {
      return tell(session, state, AuditRun.of(bench, scale, ids, most, lines));
    }
  }

  private static int tell(Session session, BatchState batch, List<BagAudit.Audited> all) {
    List<Map<String, @Nullable Object>> rows = new ArrayList<>();
    boolean agree = true;
    for (BagAudit.Audited one : all) {
      agree &= one.agrees();
      Map<String, @Nullable Object> row = new LinkedHashMap<>();
      row.put("filter", one.filter());
      EventLines.putMass(row, one.measured(), one.entry());
      row.put("change_mg", one.change().toMilligrams());
      row.put("agrees", one.agrees());
      rows.add(row);
      session.fact(
          one.filter()
              + (one.agrees() ? " agrees" : " DIFFERS")
              + ": "
              + one.change().toMilligrams()
              + " mg");
    }
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("batch", batch.name());
    document.put("audited", rows);
    document.put("agree", agree);
    session.document(document);
    if (!agree) {
      session.message("A bag holds another filter, or one that changed. Audit the whole batch;");
      session.message("siltbench fit says which ID a loose filter fits.");
    }
    return agree ? 0 : 1;
  }
}
