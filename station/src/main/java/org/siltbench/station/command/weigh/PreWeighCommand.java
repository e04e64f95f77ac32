package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.LotState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.lot.MassWindow;
import org.siltbench.station.work.preweigh.AfterRecord;
import org.siltbench.station.work.preweigh.CloseBag;
import org.siltbench.station.work.preweigh.PreWeighReport;
import org.siltbench.station.work.preweigh.PreWeighRun;
import org.siltbench.station.work.preweigh.PreWeighSettings;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Patience;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code preweigh}. */
final class PreWeighCommand implements Task {

  @Option(names = "--batch", required = true, paramLabel = "NAME", description = "the batch")
  private String batch = "";

  @Option(
      names = "--balance",
      paramLabel = "SPEC",
      description =
          "serial:PATH, tcp:HOST:PORT, replay:FILE, typed or practice, with ?key=value&... behind it; with"
              + " --keyed or --stated the name of the balance")
  private @Nullable String balance;

  @Option(names = "--count", paramLabel = "K", description = "at most so many; default: all")
  private int count = Integer.MAX_VALUE;

  @Option(
      names = "--repeat",
      arity = "0..1",
      fallbackValue = "10",
      paramLabel = "N",
      description = "weigh one in N again for repeatability; without a number one in 10")
  private int repeat;

  @Option(names = "--scan", description = "wait for each bag to be scanned closed")
  private boolean scan;

  @Option(names = "--keyed", description = "type each mass in twice, from standard input")
  private boolean keyed;

  @Option(
      names = "--stated",
      paramLabel = "FILE.csv",
      description = "take in masses written down before: columns filter, mass_g, weighed")
  private @Nullable Path stated;

  @Option(
      names = "--window",
      paramLabel = "LOW..HIGH",
      description = "masses to take, g, instead of the lot's window")
  private @Nullable String window;

  @Option(
      names = "--weight",
      paramLabel = "W",
      description = "check weight to open, bracket and close with on the same pan")
  private @Nullable String weight;

  @Option(
      names = "--label-printer",
      paramLabel = "QUEUE",
      description = "print each label as soon as its mass is recorded")
  private @Nullable String printer;

  @Option(
      names = "--media",
      paramLabel = "FILE-or-name",
      description = "label stock; default: ${DEFAULT-VALUE}")
  private String media = "roll-50x25";

  @Option(
      names = "--dpi",
      paramLabel = "N",
      description = "the label printer's dots per inch; default: ${DEFAULT-VALUE}")
  private int dpi = 300;

  @Option(
      names = "--give-up",
      paramLabel = "SPAN",
      description = "end after a silent or lost link of this length; default: ${DEFAULT-VALUE}")
  private String giveUp = "5m";

  @Option(
      names = "--at",
      paramLabel = "TIME",
      description = "with --keyed: when they were weighed, if not now")
  private @Nullable String at;

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    if (keyed || stated != null) {
      return keyedIn(session);
    }
    if (balance == null) {
      throw new Problem.WrongUse(
          "Which balance?", "Give --balance SPEC, or --keyed where it has no port.");
    }
    if (Scale.parse(balance) instanceof LinkSpec.Typed && scan) {
      throw new Problem.WrongUse(
          "A balance that types and a scanner cannot share standard input here.",
          "Leave --scan out, and scan the bags closed later.");
    }
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    Method method = session.methods().inForce(bench.register(), state.method());
    return weigh(session, bench, state, method, balance);
  }

  private int weigh(Session session, Bench bench, BatchState state, Method method, String spec)
      throws InterruptedException {
    warnOfLot(session, bench, state.lot());
    EventLines lines = new EventLines(session);
    CheckWeight check = weight == null ? null : CheckWeight.named(bench.register(), weight);
    PanSettings pans = Pans.filters(method);
    PanSettings all = check == null ? pans : Pans.with(pans, check.nominal());
    try (Scale scale =
        Scale.open(
            bench,
            spec,
            session.balances(),
            all,
            Patience.USUAL.endingAfter(Times.span(giveUp)),
            lines)) {
      PreWeighSettings settings =
          new PreWeighSettings(method, scale.name(), count, repeat, window(), check);
      Optional<LabelAtOnce> printing =
          Optional.ofNullable(printer)
              .map(q -> new LabelAtOnce(session, bench, state, method, q, media, dpi));
      PreWeighRun run =
          new PreWeighRun(
              bench, state, scale.pan(), settings, after(session, bench, printing), lines);
      return finish(session, bench, state, method, run, printing);
    }
  }

  private static void warnOfLot(Session session, Bench bench, String lot) {
    LotState.fold(lot, bench.register().history(About.lot(lot)))
        .filter(known -> known.verdict().equals("failed"))
        .ifPresent(
            known ->
                session.message(
                    "Lot " + lot + " has failed its blank-loss test; its results carry that."));
  }

  private @Nullable MassWindow window() {
    return window == null ? null : MassWindow.parse(window);
  }

  private AfterRecord after(Session session, Bench bench, Optional<LabelAtOnce> printing) {
    AfterRecord after =
        printing.map(print -> AfterRecord.NOTHING.then(print)).orElse(AfterRecord.NOTHING);
    return scan
        ? after.then(new CloseBag(bench, new ScanClosed(session, ScanFeed.of(session.console()))))
        : after;
  }

  private static int finish(
      Session session,
      Bench bench,
      BatchState state,
      Method method,
      PreWeighRun run,
      Optional<LabelAtOnce> printing)
      throws InterruptedException {
    PreWeighReport report;
    try {
      report = run.run();
    } catch (Problem e) {
      tell(session, state, run.soFar(), printing);
      throw e;
    }
    tell(session, state, report, printing);
    ConstancyNote.tell(
        session,
        bench,
        Filters.ofBatch(bench.register(), state.code()).stream()
            .filter(f -> !f.pre().isEmpty())
            .toList(),
        method);
    return PreWeighText.close(session, state, report);
  }

  private static void tell(
      Session session, BatchState state, PreWeighReport report, Optional<LabelAtOnce> printing) {
    Map<String, Object> document = new LinkedHashMap<>(PreWeighText.document(state, report));
    printing.ifPresent(print -> document.put("labels_waiting", print.waiting()));
    session.document(document);
    printing.ifPresent(LabelAtOnce::tellWaiting);
  }

  private int keyedIn(Session session) throws IOException {
    Bench bench = session.existingBench();
    BatchState state = Batches.require(bench.register(), batch);
    Method method = session.methods().inForce(bench.register(), state.method());
    KeyedInput input =
        new KeyedInput(
            session,
            bench,
            state,
            method,
            balance == null ? "unnamed" : balance,
            window(),
            Times.past(at, session.clock()));
    return stated == null ? input.typed(count) : input.table(stated);
  }
}
