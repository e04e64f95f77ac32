package org.siltbench.station.window.log;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.results.Impact;

/**
 * One act on the log in two steps: first what it would change is shown, then it is done. Whatever
 * is typed in between asks for the first step again.
 */
final class AmendModel {

  /** Where it stands. */
  enum Step {
    TYPED,
    LOOKED,
    DONE
  }

  /** What is shown below the form. */
  record State(Step step, List<Impact.Change> changes) {}

  private final Desk desk;
  private final Texts texts;
  private final ReadOnlyObjectWrapper<State> state =
      new ReadOnlyObjectWrapper<>(new State(Step.TYPED, List.of()));
  private Optional<Amend> looked = Optional.empty();
  final StringProperty reason = new SimpleStringProperty("");

  AmendModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(AmendModel.class);
    reason.subscribe(this::typed);
  }

  ReadOnlyObjectProperty<State> state() {
    return state.getReadOnlyProperty();
  }

  /** Something of the form changed. */
  void typed() {
    looked = Optional.empty();
    if (state.get().step() == Step.LOOKED) {
      state.set(new State(Step.TYPED, List.of()));
    }
  }

  /** Begins anew, for something else. */
  void anew() {
    reason.set("");
    looked = Optional.empty();
    state.set(new State(Step.TYPED, List.of()));
  }

  private record Ahead(Amend amend, List<Impact.Change> changes) {}

  /** Shows what the act would change; nothing is written. */
  void look(Supplier<Amend> wanted) {
    desk.notices().clear(LogModel.ABOUT);
    desk.work()
        .run(
            () -> {
              Amend amend = wanted.get();
              return new Ahead(amend, amend.ahead(desk.lab(), desk.methods()));
            },
            ahead -> {
              looked = Optional.of(ahead.amend());
              state.set(new State(Step.LOOKED, ahead.changes()));
            },
            this::refuse);
  }

  /** Does what was looked at. */
  void act() {
    if (looked.isEmpty()) {
      refuse(new Problem.WrongUse(texts.get("look.first"), texts.get("look.first.next")));
      return;
    }
    Amend amend = looked.get();
    desk.notices().clear(LogModel.ABOUT);
    desk.work().run(() -> amend.record(desk.lab(), desk.methods()), this::done, this::refuse);
  }

  private void done(Impact.Outcome outcome) {
    looked = Optional.empty();
    reason.set("");
    state.set(new State(Step.DONE, outcome.changes()));
    String refs =
        String.join(", ", outcome.written().stream().map(one -> one.ref().toString()).toList());
    desk.notices()
        .show(Notice.note(LogModel.ABOUT, texts.get("done", refs, outcome.changes().size())));
    for (Impact.Change change : outcome.changes()) {
      if (!change.report().isEmpty()) {
        desk.notices()
            .show(
                Notice.warning(
                    LogModel.ABOUT + ".report",
                    texts.get("amended", change.report(), change.filter()),
                    texts.get("amended.next")));
      }
    }
    desk.cues().give(Cues.Cue.RECORDED);
    desk.changed();
  }

  private void refuse(Problem problem) {
    desk.notices().show(LogModel.ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }
}
