package org.siltbench.station.command.weigh;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.command.Times;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.postweigh.PostWeighReport;
import org.siltbench.station.work.postweigh.PostWeighRun;
import org.siltbench.station.work.postweigh.PostWeighSettings;
import org.siltbench.station.work.postweigh.Strictest;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Patience;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Option;

/** {@code postweigh}. */
final class PostWeighCommand implements Task {

  @Option(
      names = "--balance",
      paramLabel = "SPEC",
      description =
          "serial:PATH, tcp:HOST:PORT, replay:FILE, typed or practice, with ?key=value&... behind it; with"
              + " --keyed the name of the balance")
  private @Nullable String balance;

  @Option(
      names = "--batch",
      paramLabel = "NAME",
      description = "the batch expected: a bag of another one is a wrong bag")
  private @Nullable String batch;

  @Option(names = "--go-on", description = "go on after a refusal instead of stopping")
  private boolean goOn;

  @Option(names = "--both", description = "ask for the dish too after each bag")
  private boolean both;

  @Option(names = "--repeat", description = "for repeatability: these masses do not count")
  private boolean repeat;

  @Option(
      names = "--accept",
      split = ",",
      paramLabel = "ID",
      description = "filters that may weigh less than the method's limit below their clean mass")
  private List<String> accept = List.of();

  @Option(names = "--reason", paramLabel = "TEXT", description = "with --accept: why")
  private String reason = "";

  @Option(
      names = "--weight",
      paramLabel = "W",
      description = "check weight to open, bracket and close with on the same pan")
  private @Nullable String weight;

  @Option(names = "--keyed", description = "lines of ID MASS MASS: each mass typed twice, in g")
  private boolean keyed;

  @Option(names = "--at", paramLabel = "TIME", description = "with --keyed: when, if not now")
  private @Nullable String at;

  @Option(
      names = "--give-up",
      paramLabel = "SPAN",
      description = "end after a silent or lost link of this length; default: ${DEFAULT-VALUE}")
  private String giveUp = "5m";

  @Override
  public int run(Session session) throws IOException, InterruptedException {
    if (balance == null && !keyed) {
      throw new Problem.WrongUse(
          "Which balance?", "Give --balance SPEC, or --keyed where it has no port.");
    }
    if (at != null && !keyed) {
      throw new Problem.WrongUse(
          "--at goes with --keyed only.", "A mass read from a balance is weighed now.");
    }
    Bench bench = session.existingBench();
    if (keyed) {
      return new KeyedPost(session, bench, settings(session, bench, name(), null)).run();
    }
    return weigh(session, bench, String.valueOf(balance));
  }

  private String name() {
    return balance == null ? "unnamed" : balance;
  }

  private int weigh(Session session, Bench bench, String spec) throws InterruptedException {
    Scale.parse(spec);
    CheckWeight check = weight == null ? null : CheckWeight.named(bench.register(), weight);
    PanSettings filters =
        Pans.filters(
            Strictest.method(bench.register(), session.methods(), Optional.ofNullable(batch)));
    PanSettings pans = check == null ? filters : Pans.with(filters, check.nominal());
    PostWeighLines lines = new PostWeighLines(session);
    Patience patience = Patience.USUAL.endingAfter(Times.span(giveUp));
    TypedScans typed = new TypedScans();
    try (Scale scale = Scale.open(bench, spec, session.balances(typed), pans, patience, lines)) {
      PostWeighSettings settings = settings(session, bench, scale.name(), check);
      boolean types = Scale.parse(spec) instanceof LinkSpec.Typed;
      ScanOnDemand scans = types ? null : ScanOnDemand.of(session.console());
      PostWeighRun run =
          PostWeighRun.of(
              bench,
              session.methods(),
              scale.pan(),
              scans == null ? typed : scans,
              settings,
              lines);
      return finish(session, run, scans == null ? List::of : scans::rest);
    }
  }

  private int finish(Session session, PostWeighRun run, Supplier<List<String>> rest)
      throws InterruptedException {
    PostWeighText text = new PostWeighText(session, batch);
    PostWeighReport report;
    try {
      report = run.run();
    } catch (Problem e) {
      text.document(run.soFar(), List.of());
      throw e;
    }
    List<String> unread = report.stopped().isEmpty() ? List.of() : rest.get();
    text.document(report, unread);
    return text.close(report, unread);
  }

  private PostWeighSettings settings(
      Session session, Bench bench, String name, @Nullable CheckWeight check) {
    OffsetDateTime stated = Times.past(at, session.clock());
    Set<String> accepted = new HashSet<>();
    accept.forEach(id -> accepted.add(BagScan.of(id).filter().text()));
    return new PostWeighSettings(
        name,
        Strictest.expected(bench.register(), Optional.ofNullable(batch)),
        goOn,
        repeat,
        both,
        accepted,
        reason,
        check,
        stated);
  }
}
