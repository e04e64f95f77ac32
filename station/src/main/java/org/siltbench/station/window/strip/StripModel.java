package org.siltbench.station.window.strip;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.siltbench.balance.SourceEvent;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.life.Fields;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Work;
import org.siltbench.station.work.check.CheckState;
import org.siltbench.station.work.correct.Correction;
import org.siltbench.station.work.live.Trace;
import org.siltbench.station.work.weigh.WeighEvent;

/** What the strip shows. Events come on any thread; properties change on the screen's. */
public final class StripModel {

  /** Whether the balance was checked today. */
  enum Check {
    UNKNOWN,
    MISSING,
    PASSED,
    FAILED,
    OVERRIDDEN
  }

  /**
   * The last mass of this window that is on the disk.
   *
   * @param what the filter or weight
   * @param grams its mass
   * @param entry where it stands in the ledger
   */
  record Last(String what, String grams, EntryRef entry) {}

  private static final long BETWEEN_DIGITS_NANOS = 66_000_000L;

  private final FaceFold fold = new FaceFold();
  private final AtomicBoolean pending = new AtomicBoolean();
  private final ReadOnlyObjectWrapper<Face> face = new ReadOnlyObjectWrapper<>(Face.START);
  private final ReadOnlyObjectWrapper<Check> check = new ReadOnlyObjectWrapper<>(Check.UNKNOWN);
  private final ReadOnlyObjectWrapper<Optional<Last>> last =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper balance = new ReadOnlyStringWrapper("");
  private final ReadOnlyLongWrapper drawings = new ReadOnlyLongWrapper();
  private final Work work;
  private volatile long shown;

  /** A strip without a balance yet. */
  public StripModel(Work work) {
    this.work = work;
  }

  ReadOnlyObjectProperty<Face> face() {
    return face.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Check> check() {
    return check.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<Last>> last() {
    return last.getReadOnlyProperty();
  }

  ReadOnlyStringProperty balance() {
    return balance.getReadOnlyProperty();
  }

  /** Grows whenever the trace should be drawn anew: it moves on though the digits stand. */
  ReadOnlyLongProperty drawings() {
    return drawings.getReadOnlyProperty();
  }

  Trace trace() {
    return fold.trace();
  }

  /** The balance said something; any thread. A state is shown at once, digits 15 times a second. */
  public void heard(SourceEvent event) {
    Face.State before = fold.face().state();
    fold.heard(event);
    long now = System.nanoTime();
    if (fold.face().state() != before || now - shown >= BETWEEN_DIGITS_NANOS) {
      shown = now;
      refresh();
    }
  }

  /** The run said something; any thread. */
  public void ran(WeighEvent event) {
    fold.ran(event);
    refresh();
  }

  /** Many events become one change of the screen. */
  private void refresh() {
    if (pending.compareAndSet(false, true)) {
      work.onScreen(
          () -> {
            pending.set(false);
            face.set(fold.face());
            drawings.set(drawings.get() + 1);
          });
    }
  }

  /** Draws the trace anew, as after a change of the look. */
  public void redraw() {
    drawings.set(drawings.get() + 1);
  }

  /** Follows the desk: runs that end, what is recorded, the day's check. */
  public void follow(Desk desk) {
    desk.weighing()
        .running()
        .subscribe(
            who -> {
              if (who.isEmpty()) {
                fold.runOver();
                refresh();
              }
            });
    desk.changes().subscribe(() -> look(desk));
    look(desk);
  }

  private record Looked(String balance, Check check) {}

  private void look(Desk desk) {
    work.run(
        () -> {
          String name = desk.balanceName();
          return new Looked(name, name.isEmpty() ? Check.UNKNOWN : checked(desk, name));
        },
        now -> {
          balance.set(now.balance());
          check.set(now.check());
        });
  }

  private static Check checked(Desk desk, String name) {
    CheckState state =
        CheckState.of(
            desk.lab().register(), name, LocalDate.now(desk.clock()), desk.clock().getZone());
    if (state.covered()) {
      return Check.OVERRIDDEN;
    }
    if (state.last().isEmpty() || (state.passed() && state.bracketDue())) {
      return Check.MISSING;
    }
    return state.passed() ? Check.PASSED : Check.FAILED;
  }

  /** A run told of something; on the screen's thread. */
  public void told(WeighEvent event, Desk desk) {
    if (event instanceof WeighEvent.Recorded recorded) {
      Fields data = Fields.of(recorded.entry());
      String what = data.find("filter").orElse(data.text("weight"));
      last.set(Optional.of(new Last(what, recorded.measured().grams(), recorded.entry().ref())));
      desk.changed();
      desk.cues().give(Cues.Cue.RECORDED);
    } else if (event instanceof WeighEvent.Declined) {
      desk.cues().give(Cues.Cue.REFUSED);
    }
  }

  /** Takes the last mass back by a new entry; both stay in the ledger. */
  void undo(Desk desk, String reason) {
    last.get()
        .ifPresent(
            mass ->
                desk.record(
                    () ->
                        new Correction(mass.entry(), Map.of("void", "yes"), reason)
                            .record(desk.lab()),
                    done -> last.set(Optional.empty())));
  }
}
