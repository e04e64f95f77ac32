package org.siltbench.station.work.preweigh;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.check.CheckRound;
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
  private final CheckRound checks;

  private final List<PreWeighReport.Done> weighings = new ArrayList<>();
  private final List<PreWeighReport.Done> repeats = new ArrayList<>();
  private final List<PreWeighReport.Refusal> refused = new ArrayList<>();
  private final List<Mass> lotMasses;
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
        new CheckRound(
            bench,
            pan,
            settings.balance(),
            settings.weight(),
            List.of(settings.method().balance()),
            listener);
    this.lotMasses = new ArrayList<>(LotMasses.clean(bench.register(), batch.lot()));
  }

  /** Weighs until the count is reached, the batch is done, or a rule stops it. */
  public PreWeighReport run() throws InterruptedException {
    List<Turn> due = plan().due();
    if (due.isEmpty()) {
      return report(Words.none());
    }
    Words stopped = undried(due.get(0).filter());
    if (stopped.isEmpty()) {
      stopped = checks.opening();
    }
    while (stopped.isEmpty() && !due.isEmpty() && weighings.size() < settings.count()) {
      stopped = turn(due.get(0));
      due = plan().due();
    }
    return report(stopped.isEmpty() ? checks.closing() : stopped);
  }

  /** A lot that was not dried is told before the first load, not filter by filter. */
  private Words undried(String first) {
    FilterState filter = Filters.require(bench.register(), first);
    return PreRecord.isUndried(bench.register(), filter)
        ? Said.of(PreWeighSays.LOT_UNDRIED, filter.lot(), PreRecord.DRY_FIRST)
        : Words.none();
  }

  private PrePlan plan() {
    return PrePlan.of(bench.register(), batch, settings.method());
  }

  private Words turn(Turn turn) throws InterruptedException {
    Words stopped = checks.bracket();
    if (!stopped.isEmpty()) {
      return stopped;
    }
    Optional<PreWeighReport.Done> done = weigh(turn);
    if (done.isEmpty()) {
      refusedInARow++;
      return refusedInARow < MOST_REFUSALS
          ? Words.none()
          : Said.of(PreWeighSays.IN_A_ROW, MOST_REFUSALS);
    }
    refusedInARow = 0;
    checks.weighed();
    weighings.add(done.get());
    lotMasses.add(done.get().measured().mass());
    after.done(turn.filter(), done.get().entry(), pan);
    repeat(turn);
    return Words.none();
  }

  private Optional<PreWeighReport.Done> weigh(Turn turn) throws InterruptedException {
    PanOutcome outcome = pan.weigh(turn.load());
    if (outcome instanceof PanOutcome.NotTaken no) {
      return refuse(turn.filter(), no.words(), null);
    }
    Measured seen = observed((PanOutcome.Stable) outcome);
    Words outside = outside(seen.mass());
    if (!outside.isEmpty()) {
      return refuse(turn.filter(), outside, seen);
    }
    try {
      return Optional.of(recorded(turn.filter(), seen, record.first(turn, seen)));
    } catch (Problem.Refused e) {
      return refuse(turn.filter(), e, seen);
    }
  }

  private Measured observed(PanOutcome.Stable stable) {
    return Measured.observed(stable, settings.balance(), pan.formatName());
  }

  private PreWeighReport.Done recorded(String filter, Measured seen, Entry entry) {
    listener.accept(new WeighEvent.Recorded(entry, seen));
    return new PreWeighReport.Done(filter, seen, entry);
  }

  private Optional<PreWeighReport.Done> refuse(String filter, Words why, @Nullable Measured seen) {
    refused.add(new PreWeighReport.Refusal(filter, why.english()));
    listener.accept(new WeighEvent.Declined(filter, why, seen));
    return Optional.empty();
  }

  private Words outside(Mass mass) {
    MassWindow given = settings.window();
    Optional<MassWindow> window =
        given != null
            ? Optional.of(given)
            : LotMasses.window(bench.register(), batch.lot(), lotMasses);
    return window
        .filter(w -> !w.holds(mass))
        .<Words>map(w -> Said.of(PreWeighSays.LOT_WINDOW, mass.toGrams(), w.text()))
        .orElse(Words.none());
  }

  private void repeat(Turn turn) throws InterruptedException {
    int every = settings.repeatEvery();
    if (every == 0 || weighings.size() % every != 0) {
      return;
    }
    PanOutcome outcome =
        pan.weigh(new PanLoad.OfFilter(turn.filter(), Said.of(PreWeighSays.ONCE_MORE)));
    if (outcome instanceof PanOutcome.NotTaken no) {
      refuse(turn.filter(), no.words(), null);
      return;
    }
    Measured seen = observed((PanOutcome.Stable) outcome);
    repeats.add(recorded(turn.filter(), seen, record.repeat(turn, seen)));
  }

  /** True if a failed or missing check has stopped it. */
  public boolean stoppedByCheck() {
    return checks.hasStopped();
  }

  /** What has been recorded so far. */
  public PreWeighReport soFar() {
    return report(Words.none());
  }

  private PreWeighReport report(Words stopped) {
    PrePlan plan = plan();
    return new PreWeighReport(weighings, repeats, refused, plan.due().size(), stopped);
  }
}
