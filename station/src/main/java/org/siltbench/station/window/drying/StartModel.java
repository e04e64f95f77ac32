package org.siltbench.station.window.drying;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.drying.CyclePlan;
import org.siltbench.station.work.drying.Dishes;
import org.siltbench.station.work.drying.DryStart;
import org.siltbench.station.work.drying.DueBatches;
import org.siltbench.station.work.drying.Load;
import org.siltbench.station.work.drying.Purpose;
import org.siltbench.station.work.scan.BagScan;

/** A cycle that is put together: bags are scanned, each gets a dish, the thermometer is read. */
final class StartModel {

  /** A filter for the oven, and its dish or an empty text. */
  record Placed(FilterState state, String dish) {}

  private final Desk desk;
  private final Texts texts;
  private final Consumer<String> started;
  private final ObservableList<Placed> rows = FXCollections.observableArrayList();
  private final ObservableList<DueBatches.Waiting> waiting = FXCollections.observableArrayList();
  private final ObservableList<Load> loads = FXCollections.observableArrayList();
  private final StringProperty prompt = new SimpleStringProperty("");
  private final StringProperty joins = new SimpleStringProperty("");
  private final StringProperty purpose = new SimpleStringProperty(Purpose.POST.code());
  private final Gauge gauge = new Gauge();

  StartModel(Desk desk, Consumer<String> started) {
    this.desk = desk;
    this.texts = desk.texts(StartModel.class);
    this.started = started;
    ask();
  }

  ObservableList<Placed> rows() {
    return rows;
  }

  /** Batches with filters that wait for the oven and are not on the list yet. */
  ObservableList<DueBatches.Waiting> waiting() {
    return waiting;
  }

  /** The loads they would make if the clock started now. */
  ObservableList<Load> loads() {
    return loads;
  }

  Gauge gauge() {
    return gauge;
  }

  StringProperty prompt() {
    return prompt;
  }

  /** The running cycle they go into, or empty. */
  StringProperty joins() {
    return joins;
  }

  StringProperty purpose() {
    return purpose;
  }

  void join(CyclePlan plan) {
    purpose(plan.cycle().purpose());
    joins.set(plan.cycle().id());
  }

  /** Another purpose: the list starts anew, as other filters may go in. */
  void purpose(String code) {
    if (!purpose.get().equals(code)) {
      purpose.set(code);
      joins.set("");
      clear();
    }
  }

  void refresh() {
    Purpose why = Purpose.of(purpose.get());
    List<String> ids = rows.stream().map(row -> row.state().id()).toList();
    desk.work()
        .run(
            () -> DueBatches.of(desk.lab().register(), why),
            all -> waiting.setAll(all.stream().filter(one -> missing(one, ids)).toList()));
    desk.work()
        .run(
            () ->
                CyclePlan.ahead(
                    desk.lab().register(),
                    desk.methods(),
                    ids,
                    why,
                    OffsetDateTime.now(desk.clock())),
            loads::setAll,
            problem -> loads.clear()); // the start itself will say why
  }

  private static boolean missing(DueBatches.Waiting one, List<String> ids) {
    return one.filters().stream().anyMatch(state -> !ids.contains(state.id()));
  }

  private void ask() {
    prompt.set(
        rows.isEmpty()
            ? texts.get("prompt.first")
            : pending() < 0
                ? texts.get("prompt.next")
                : texts.get("prompt.dish", rows.get(pending()).state().id()));
  }

  /** The row whose dish is asked for; -1 for none. */
  private int pending() {
    int last = rows.size() - 1;
    return last >= 0 && rows.get(last).dish().isEmpty() ? last : -1;
  }

  void bag(BagScan bag) {
    String id = bag.filter().text();
    Purpose why = Purpose.of(purpose.get());
    for (Placed row : rows) {
      if (row.state().id().equals(id)) {
        again(row);
        return;
      }
    }
    desk.work().run(() -> admit(bag, why), this::take, this::refuse);
  }

  /** A bag that was scanned before comes last, so that the next number is its dish. */
  private void again(Placed row) {
    rows.remove(row);
    rows.add(new Placed(row.state(), ""));
    desk.notices().show(Notice.note(DryingModel.ABOUT, texts.get("again", row.state().id())));
    ask();
  }

  private record Admitted(FilterState state, Words hint) {}

  private Admitted admit(BagScan bag, Purpose why) {
    RegisterView register = desk.lab().register();
    FilterState state = DryStart.admit(register, desk.methods(), why, bag.filter().text());
    return new Admitted(state, bag.compare(state));
  }

  private void take(Admitted admitted) {
    desk.notices().clear(DryingModel.ABOUT);
    if (!admitted.hint().isEmpty()) {
      desk.notices().show(Notice.note(DryingModel.ABOUT, texts.say(admitted.hint())));
    }
    rows.add(new Placed(admitted.state(), ""));
    ask();
    refresh();
  }

  private void refuse(Problem problem) {
    desk.notices().show(DryingModel.ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }

  /** A dish number was scanned or typed; false if no bag waits for one. */
  boolean dish(String number) {
    int at = pending();
    if (at < 0 || number.length() > 20) {
      return false;
    }
    Placed placed = new Placed(rows.get(at).state(), number);
    try {
      Map<String, String> all = dishes();
      all.put(placed.state().id(), number);
      Dishes.requireOneEach(all);
      rows.set(at, placed);
      ask();
    } catch (Problem.Refused e) {
      refuse(e);
    }
    return true;
  }

  private Map<String, String> dishes() {
    Map<String, String> out = new LinkedHashMap<>();
    rows.forEach(row -> out.put(row.state().id(), row.dish()));
    return out;
  }

  /** Takes all that wait of a batch, without dishes so far. */
  void addAll(DueBatches.Waiting batch) {
    List<String> there = rows.stream().map(row -> row.state().id()).toList();
    batch.filters().stream()
        .filter(state -> !there.contains(state.id()))
        .forEach(state -> rows.add(new Placed(state, "")));
    ask();
    refresh();
  }

  /** Gives a number to every dish that has none. */
  void number() {
    Map<String, String> numbered = Dishes.numbered(dishes());
    rows.replaceAll(row -> new Placed(row.state(), numbered.getOrDefault(row.state().id(), "")));
    ask();
  }

  void remove(Placed row) {
    rows.remove(row);
    ask();
    refresh();
  }

  /** Starts the list anew. */
  void clear() {
    rows.clear();
    gauge.clear();
    ask();
    refresh();
  }

  /** Starts the clock. */
  void start() {
    Map<String, String> dishes = dishes();
    Purpose why = Purpose.of(purpose.get());
    String cycle = joins.get();
    desk.notices().clear(DryingModel.ABOUT);
    Gauge.Said said = gauge.said();
    desk.work().run(() -> start(dishes, why, cycle, said), this::done, this::refuse);
  }

  private DryStart.Started start(
      Map<String, String> dishes, Purpose why, String cycle, Gauge.Said said) {
    boolean restart = !cycle.isEmpty();
    return new DryStart(dishes, why, said.heat(texts), said.at(texts, desk.clock()), cycle, restart)
        .record(desk.lab(), desk.methods());
  }

  private void done(DryStart.Started done) {
    joins.set("");
    clear();
    desk.changed();
    desk.cues().give(Cues.Cue.RECORDED);
    for (Words warning : done.warnings()) {
      desk.notices().show(Notice.warning(DryingModel.ABOUT, texts.say(warning), ""));
    }
    started.accept(done.cycle().id());
  }
}
