package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Times;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.said.Words;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;
import org.siltbench.station.work.lot.MassWindow;
import org.siltbench.station.work.preweigh.KeyedMasses;
import org.siltbench.station.work.preweigh.KeyedMasses.Stated;
import org.siltbench.station.work.preweigh.PrePlan;
import org.siltbench.station.work.preweigh.PreWeighReport;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Measured;

/** Masses typed in twice, or taken from a table of handwritten ones. */
final class KeyedInput {

  private final Session session;
  private final Bench bench;
  private final BatchState batch;
  private final Method method;
  private final String balance;
  private final @Nullable MassWindow window;
  private final @Nullable OffsetDateTime at;
  private final List<PreWeighReport.Done> done = new ArrayList<>();

  KeyedInput(
      Session session,
      Bench bench,
      BatchState batch,
      Method method,
      String balance,
      @Nullable MassWindow window,
      @Nullable OffsetDateTime at) {
    this.session = session;
    this.bench = bench;
    this.batch = batch;
    this.method = method;
    this.balance = balance;
    this.window = window;
    this.at = at;
  }

  /** Asks for each filter's mass twice. */
  int typed(int count) throws IOException {
    while (done.size() < count) {
      Optional<String> next =
          PrePlan.of(bench.register(), batch, method).first(1).stream().findFirst();
      if (next.isEmpty() || !one(next.get())) {
        break;
      }
    }
    return finish();
  }

  private boolean one(String filter) throws IOException {
    while (true) {
      String first = ask("Mass of " + filter + " in g:", filter);
      String second = first == null ? null : ask("Once more:", filter);
      if (first == null || second == null) {
        return false;
      }
      try {
        Optional<String> grams = KeyedMasses.twice(first, second);
        if (grams.isPresent()) {
          record(List.of(new Stated(filter, grams.get(), at)));
          return true;
        }
        session.message("The two differ; nothing is recorded. Type both again.");
      } catch (Problem.WrongUse | Problem.Refused e) {
        session.message(e.what() + " " + e.next());
      }
    }
  }

  private @Nullable String ask(String prompt, String filter) throws IOException {
    session.progress(prompt, Map.of("event", "type-mass", "filter", filter));
    return session.console().readLine();
  }

  /** Takes in a table of masses, all or none. */
  int table(Path file) throws IOException {
    List<Stated> masses = new ArrayList<>();
    try (Table table = Table.open(file)) {
      int filter = table.require("filter");
      int mass = table.require("mass_g");
      int weighed = table.column("weighed");
      table.forEachRemaining(row -> masses.add(row(row, filter, mass, weighed)));
    }
    record(masses);
    return finish();
  }

  private Stated row(Row row, int filter, int mass, int weighed) {
    String id;
    try {
      id = BagScan.of(row.text(filter)).filter().text();
    } catch (Problem.Refused e) {
      throw row.wrong(filter, "a filter ID");
    }
    String grams =
        row.decimal(mass, "a mass in g").orElseThrow(() -> row.wrong(mass, "a mass in g"));
    String time = row.text(weighed);
    OffsetDateTime when = time.isEmpty() ? at : Times.past(time, bench.clock());
    if (when == null) {
      throw row.wrong(weighed, "the time it was weighed (or give --at)");
    }
    return new Stated(id, KeyedMasses.grams(grams), when);
  }

  private void record(List<Stated> masses) {
    for (Entry entry : KeyedMasses.record(bench, balance, masses, window)) {
      Fields data = Fields.of(entry);
      Measured measured = Measured.keyed(data.text("mass_g"), balance, at);
      done.add(new PreWeighReport.Done(data.text("filter"), measured, entry));
      new EventLines(session)
          .accept(new org.siltbench.station.work.weigh.WeighEvent.Recorded(entry, measured));
    }
  }

  private int finish() {
    PrePlan plan = PrePlan.of(bench.register(), batch, method);
    PreWeighReport report =
        new PreWeighReport(done, List.of(), List.of(), plan.due().size(), Words.none());
    session.document(new LinkedHashMap<>(PreWeighText.document(batch, report)));
    return PreWeighText.close(session, batch, report);
  }
}
