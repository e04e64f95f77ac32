package org.siltbench.station.command.weigh;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Fields;
import org.siltbench.station.work.check.CheckOverride;
import org.siltbench.station.work.check.CheckWeighing;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.check.ControlSheet;
import org.siltbench.station.work.check.ControlValues;
import org.siltbench.station.work.check.Phase;
import org.siltbench.station.work.check.SingleCheck;
import org.siltbench.station.work.equip.BalanceRecord;
import org.siltbench.station.work.weigh.Scale;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code checkweight}. */
final class CheckCommand implements Task {

  @Mixin private BalanceOptions balance = new BalanceOptions();

  @Option(
      names = "--weight",
      paramLabel = "W",
      description = "a recorded check weight, or a nominal mass as 100mg or 20g")
  private String weight = "";

  @Option(
      names = "--phase",
      paramLabel = "WORD",
      description = "opening, bracket or closing; default: ${DEFAULT-VALUE}")
  private String phase = "opening";

  @Option(
      names = "--method",
      paramLabel = "KEY",
      description = "whose limit counts; default: ${DEFAULT-VALUE}")
  private String method = "sm-2540d-23";

  @Option(names = "--limit", paramLabel = "MG", description = "another limit, mg")
  private @Nullable String limit;

  @Option(
      names = "--override",
      description =
          "weigh nothing: a supervisor says to weigh on in spite of a failed or missing check, with"
              + " --reason; until the next check of this balance, today at the longest")
  private boolean override;

  @Option(names = "--reason", paramLabel = "TEXT", description = "with --override: why")
  private String reason = "";

  @Override
  public int run(Session session) throws InterruptedException {
    if (override) {
      return weighOn(session);
    }
    if (weight.isBlank() || !reason.isEmpty()) {
      throw new Problem.WrongUse(
          weight.isBlank() ? "Which weight?" : "A reason is no part of a check.",
          "Give --weight W; --reason goes with --override.");
    }
    Phase when = Phase.of(phase);
    Mass most = limit();
    Bench bench = Practised.bench(session, balance.spec());
    SingleCheck check =
        most == null
            ? SingleCheck.under(bench, session.methods(), method, weight, when)
            : new SingleCheck(CheckWeight.named(bench.register(), weight), when, most);
    check
        .warnings(LocalDate.now(session.clock()))
        .forEach(warning -> session.message(warning.english()));
    EventLines lines = new EventLines(session);
    try (Scale scale = balance.open(session, bench, check.pans(), lines)) {
      CheckWeighing.Checked checked = check.weigh(bench, scale, lines);
      tell(session, checked, signals(bench, scale.name(), checked));
      return checked.check().pass() ? 0 : 1;
    }
  }

  /** The balance is not opened: only its name counts. */
  private int weighOn(Session session) {
    if (!weight.isBlank()) {
      throw new Problem.WrongUse(
          "With --override nothing is weighed.", "Leave --weight out, or --override.");
    }
    Bench bench = session.existingBench();
    String name = BalanceRecord.nameOf(bench.register(), Scale.parse(balance.spec()));
    Entry entry = new CheckOverride(name, reason).record(bench);
    Fields data = Fields.of(entry);
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("balance", name);
    document.put("override", true);
    document.put("fault", data.text("fault"));
    document.put("reason", data.text("reason"));
    document.put("by", entry.by());
    Map<String, Object> ledger = new LinkedHashMap<>();
    ledger.put("bench", entry.ref().bench());
    ledger.put("seq", entry.ref().seq());
    document.put("ledger", ledger);
    session.document(document);
    session.fact("weigh on with " + name + ": entry " + entry.ref());
    session.message(
        "This holds until the next check of this balance, today at the longest. It is no pass: each"
            + " mass carries the flag check-overridden, and a release asks.");
    return 0;
  }

  private @Nullable Mass limit() {
    try {
      Mass mass = limit == null ? null : Mass.ofMilligrams(limit);
      if (mass == null || mass.nanograms() > 0) {
        return mass;
      }
    } catch (NumberFormatException e) {
      throw new Problem.WrongUse(e.getMessage() + ".", "Write the limit in mg, as 0.3.");
    }
    throw new Problem.WrongUse("A limit must be above 0 mg.", "Check --limit.");
  }

  /** The run rules that this check completes, by their stable words. */
  private static List<String> signals(Bench bench, String name, CheckWeighing.Checked checked) {
    ControlSheet sheet =
        ControlSheet.of(
            name, ControlValues.checks(bench.register(), name, checked.weight().name()));
    int last = sheet.points().size() - 1;
    return last < 0
        ? List.of()
        : sheet.signals().stream()
            .filter(signal -> signal.at().equals(sheet.points().get(last).at()))
            .map(ControlSheet.Signal::rule)
            .toList();
  }

  private static void tell(Session session, CheckWeighing.Checked checked, List<String> signals) {
    boolean pass = checked.check().pass();
    Map<String, @Nullable Object> document = new LinkedHashMap<>();
    document.put("nominal_g", checked.weight().nominal().toGrams());
    document.put("certified_g", checked.weight().certified().toGrams());
    document.put("reading_g", checked.measured().grams());
    document.put("error_mg", checked.check().error().toMilligrams());
    document.put("limit_mg", checked.check().limit().toMilligrams());
    document.put("pass", pass);
    document.put("weight_good_enough", checked.check().weightGoodEnough());
    document.put("signals", signals);
    session.document(document);
    session.fact(
        (pass ? "passed" : "FAILED")
            + ": error "
            + checked.check().error().toMilligrams()
            + " mg, limit "
            + checked.check().limit().toMilligrams()
            + " mg");
    if (!checked.check().weightGoodEnough()) {
      session.message(
          "The certificate's U is more than a third of the limit: this weight cannot tell well.");
    }
    for (String signal : signals) {
      session.message("The chart of this weight shows a signal: " + signal + ". See control.");
    }
    if (!pass) {
      session.message("The check is recorded. What was weighed since the last pass is held back.");
      session.message("Clean the pan, level and adjust the balance, then check again.");
    }
  }
}
