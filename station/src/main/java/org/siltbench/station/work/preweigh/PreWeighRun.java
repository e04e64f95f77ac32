package org.siltbench.station.work.preweigh;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.BalanceRule;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.work.check.CheckState;
import org.siltbench.station.work.check.CheckWeighing;
import org.siltbench.station.work.check.Phase;
import org.siltbench.station.work.lot.LotMasses;
import org.siltbench.station.work.lot.MassWindow;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * Pre-weighs a batch, hands-free: empty pan, load, stable, recorded, next. A mass is announced
 * after it is on the disk, never before.
 */
public final class PreWeighRun {

  private static final int MOST_REFUSALS = 5;

  private final Bench bench;
  private final BatchState batch;
  private final PanWatch pan;
  private final PreWeighSettings settings;
  private final AfterRecord after;
  private final Consumer<WeighEvent> listener;
  private final PreRecord record;
  private final CheckWeighing checks;

  private final List<PreWeighReport.Done> weighings = new ArrayList<>();
  private final List<PreWeighReport.Done> repeats = new ArrayList<>();
  private final List<PreWeighReport.Refusal> refused = new ArrayList<>();
  private final List<Mass> lotMasses;
  private int sinceCheck;
  private int refusedInARow;

  public PreWeighRun(
      Bench bench,
      BatchState batch,
      PanWatch pan,
      PreWeighSettings settings,
      AfterRecord after,
      Consumer<WeighEvent> listener) {
    this.bench = bench;
    this.batch = batch;
    this.pan = pan;
    this.settings = settings;
    this.after = after;
    this.listener = listener;
    this.record = new PreRecord(bench, settings.method());
    this.checks =
        new CheckWeighing(
            bench, pan, settings.balance(), settings.method().balance().checkLimit(), listener);
    this.lotMasses = new ArrayList<>(LotMasses.clean(bench.register(), batch.lot()));
  }

  /** Weighs until the count is reached, the batch is done, or a rule stops it. */
  public PreWeighReport run() throws InterruptedException {
    if (plan().due().isEmpty()) {
      return report("");
    }
    String stopped = undried();
    if (stopped.isEmpty()) {
      stopped = opening();
    }
    while (stopped.isEmpty() && weighings.size() < settings.count()) {
      List<Turn> due = plan().due();
      if (due.isEmpty()) {
        break;
      }
      stopped = turn(due.get(0));
    }
    return report(stopped.isEmpty() ? closing() : stopped);
  }

  /** A lot that was not dried is told before the first load, not filter by filter. */
  private String undried() {
    String first = plan().due().get(0).filter();
    FilterState filter = Filters.require(bench.register(), first);
    return PreRecord.isUndried(bench.register(), filter)
        ? "Lot " + filter.lot() + " was not dried. " + PreRecord.DRY_FIRST
        : "";
  }

  private boolean stops() {
    return settings.method().balance().missingCheck() == BalanceRule.MissingCheck.STOP;
  }

  private PrePlan plan() {
    return PrePlan.of(bench.register(), batch, settings.method());
  }

  private String opening() throws InterruptedException {
    if (settings.weight() == null) {
      return checkFault();
    }
    boolean passed = state().passed();
    return passed ? "" : check(Phase.OPENING);
  }

  private CheckState state() {
    LocalDate today = LocalDate.now(bench.clock());
    return CheckState.of(bench.register(), settings.balance(), today, bench.clock().getZone());
  }

  /** A missing or failed check stops the work or is told, as the method says. */
  private String checkFault() {
    String fault = state().fault();
    if (!fault.isEmpty() && !stops()) {
      listener.accept(new WeighEvent.Warned(fault));
    }
    return stops() ? fault : "";
  }

  private String check(Phase phase) throws InterruptedException {
    CheckWeighing.Checked checked = checks.weigh(Objects.requireNonNull(settings.weight()), phase);
    sinceCheck = 0;
    if (checked.check().pass()) {
      return "";
    }
    String fault =
        "The "
            + phase.code()
            + " check failed: the balance is off by "
            + checked.check().error().toMilligrams()
            + " mg, the limit is "
            + checked.check().limit().toMilligrams()
            + " mg.";
    if (!stops()) {
      listener.accept(new WeighEvent.Warned(fault));
      return "";
    }
    return fault;
  }

  private String closing() throws InterruptedException {
    boolean due = settings.weight() != null && !weighings.isEmpty();
    return due ? check(Phase.CLOSING) : "";
  }

  private String turn(Turn turn) throws InterruptedException {
    String stopped = bracket();
    if (!stopped.isEmpty()) {
      return stopped;
    }
    Optional<PreWeighReport.Done> done = weigh(turn);
    if (done.isEmpty()) {
      refusedInARow++;
      return refusedInARow < MOST_REFUSALS
          ? ""
          : MOST_REFUSALS + " loads in a row were refused. Look at filters, balance and room.";
    }
    refusedInARow = 0;
    sinceCheck++;
    weighings.add(done.get());
    lotMasses.add(done.get().measured().mass());
    after.done(turn.filter(), done.get().entry(), pan);
    repeat(turn);
    return "";
  }

  private String bracket() throws InterruptedException {
    if (sinceCheck < settings.method().balance().checkEvery()) {
      return "";
    }
    if (settings.weight() != null) {
      return check(Phase.BRACKET);
    }
    sinceCheck = 0;
    String due =
        settings.method().balance().checkEvery()
            + " weighings since the last check: a bracketing check is due.";
    if (stops()) {
      return due;
    }
    listener.accept(new WeighEvent.Warned(due));
    return "";
  }

  private Optional<PreWeighReport.Done> weigh(Turn turn) throws InterruptedException {
    PanOutcome outcome = pan.weigh(turn.load());
    if (outcome instanceof PanOutcome.NotTaken no) {
      return refuse(turn.filter(), no.why(), null);
    }
    Measured seen = observed((PanOutcome.Stable) outcome);
    String outside = outside(seen.mass());
    if (!outside.isEmpty()) {
      return refuse(turn.filter(), outside, seen);
    }
    try {
      return Optional.of(recorded(turn.filter(), seen, record.first(turn, seen)));
    } catch (Problem.Refused e) {
      return refuse(turn.filter(), e.getMessage() == null ? e.what() : e.getMessage(), seen);
    }
  }

  private Measured observed(PanOutcome.Stable stable) {
    return Measured.observed(stable, settings.balance(), pan.formatName());
  }

  private PreWeighReport.Done recorded(String filter, Measured seen, Entry entry) {
    listener.accept(new WeighEvent.Recorded(entry, seen));
    return new PreWeighReport.Done(filter, seen, entry);
  }

  private Optional<PreWeighReport.Done> refuse(String filter, String why, @Nullable Measured seen) {
    refused.add(new PreWeighReport.Refusal(filter, why));
    listener.accept(new WeighEvent.Declined(filter, why, seen));
    return Optional.empty();
  }

  private String outside(Mass mass) {
    MassWindow given = settings.window();
    Optional<MassWindow> window =
        given != null
            ? Optional.of(given)
            : LotMasses.window(bench.register(), batch.lot(), lotMasses);
    return window
        .filter(w -> !w.holds(mass))
        .map(
            w ->
                mass.toGrams()
                    + " g lies outside the lot's window "
                    + w.text()
                    + " g: two filters, a separator sheet, another diameter?")
        .orElse("");
  }

  private void repeat(Turn turn) throws InterruptedException {
    int every = settings.repeatEvery();
    if (every == 0 || weighings.size() % every != 0) {
      return;
    }
    PanOutcome outcome =
        pan.weigh(new PanLoad.OfFilter(turn.filter(), "once more, for repeatability"));
    if (outcome instanceof PanOutcome.NotTaken no) {
      refuse(turn.filter(), no.why(), null);
      return;
    }
    Measured seen = observed((PanOutcome.Stable) outcome);
    repeats.add(recorded(turn.filter(), seen, record.repeat(turn, seen)));
  }

  /** What has been recorded so far. */
  public PreWeighReport soFar(String stopped) {
    return report(stopped);
  }

  private PreWeighReport report(String stopped) {
    PrePlan plan = plan();
    return new PreWeighReport(weighings, repeats, refused, plan.due().size(), stopped);
  }
}
