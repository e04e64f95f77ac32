package org.siltbench.station.window.drying;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Stay;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.work.drying.Cooled;
import org.siltbench.station.work.drying.CyclePlan;
import org.siltbench.station.work.drying.Desiccator;
import org.siltbench.station.work.scan.BagScan;

/** What is in the oven and the desiccator now, and which part of the screen has the scans. */
final class DryingModel implements ScanTaker {

  static final String ABOUT = "drying";
  private static final int SECONDS_BETWEEN_LOOKS = 10;

  /** What the right side shows. */
  enum Side {
    NONE,
    START,
    CYCLE
  }

  /** One row of the list. */
  sealed interface Item {}

  /** A cycle in the oven. */
  record InOven(CyclePlan plan, OffsetDateTime now) implements Item {}

  /** A load in the desiccator. */
  record InDesiccator(Desiccator.Cooling load, OffsetDateTime now) implements Item {}

  private final Desk desk;
  private final Texts texts;
  private final Moments moments;
  private final StartModel start;
  private final CycleModel cycle;
  private final ObservableList<Item> items = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Side> side = new ReadOnlyObjectWrapper<>(Side.NONE);

  DryingModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(DryingModel.class);
    this.moments = new Moments(desk.clock(), desk.locale());
    this.start = new StartModel(desk, this::started);
    this.cycle = new CycleModel(desk, () -> side.set(Side.NONE));
    desk.changesInFront("drying", this::refresh);
    desk.seconds().subscribe(this::lookNowAndThen);
  }

  ObservableList<Item> items() {
    return items;
  }

  ReadOnlyObjectProperty<Side> side() {
    return side.getReadOnlyProperty();
  }

  StartModel start() {
    return start;
  }

  CycleModel cycle() {
    return cycle;
  }

  private void lookNowAndThen(Number seconds) {
    boolean inFront = desk.front().get().equals("drying");
    if (inFront && seconds.longValue() % SECONDS_BETWEEN_LOOKS == 0) {
      refresh();
    }
  }

  /** Looks again. */
  void refresh() {
    desk.work().run(this::look, items::setAll);
    start.refresh();
    if (side.get() == Side.CYCLE) {
      cycle.refresh();
    }
  }

  private List<Item> look() {
    RegisterView register = desk.lab().register();
    OffsetDateTime now = OffsetDateTime.now(desk.clock());
    List<Item> found = new ArrayList<>();
    CyclePlan.running(register, desk.methods()).forEach(plan -> found.add(new InOven(plan, now)));
    Desiccator.loads(register).forEach(load -> found.add(new InDesiccator(load, now)));
    return found;
  }

  /** Shows the form of a new cycle. */
  void begin() {
    side.set(Side.START);
    start.refresh();
  }

  /** Shows a running cycle. */
  void open(String id) {
    cycle.open(id);
    side.set(Side.CYCLE);
  }

  /** Goes where dry filters are weighed. */
  void weigh() {
    desk.go("postweigh");
  }

  /** The form with wet filters for this cycle: its clock will start anew. */
  void join(CyclePlan plan) {
    start.join(plan);
    begin();
  }

  private void started(String id) {
    open(id);
  }

  @Override
  public boolean scanned(BagScan bag) {
    switch (side.get()) {
      case START -> start.bag(bag);
      case CYCLE -> cycle.bag(bag, () -> where(bag));
      case NONE -> where(bag);
    }
    return true;
  }

  @Override
  public boolean scannedOther(String text) {
    return switch (side.get()) {
      case START -> start.dish(text);
      case CYCLE -> cycle.dish(text);
      case NONE -> false;
    };
  }

  /** Says where a filter is; one that is asked for too early is refused with the time left. */
  private void where(BagScan bag) {
    desk.work()
        .run(
            () -> Filters.require(desk.lab().register(), bag.filter().text()),
            this::tell,
            problem -> {
              desk.notices().show(ABOUT, problem);
              desk.cues().give(Cues.Cue.REFUSED);
            });
  }

  private void tell(FilterState state) {
    if (state.status() != Status.DRYING) {
      String key = state.status() == Status.RECEIVED ? "where.waits" : "where.other";
      desk.notices().show(Notice.note(ABOUT, texts.get(key, state.id())));
      return;
    }
    desk.work()
        .run(
            () ->
                Cooled.require(
                    state,
                    OffsetDateTime.now(desk.clock()),
                    Words.verbatim(texts.get("safe.stays"))),
            stay -> desk.notices().show(Notice.note(ABOUT, ready(state, stay))),
            problem -> {
              desk.notices().show(ABOUT, problem);
              desk.cues().give(Cues.Cue.REFUSED);
            });
  }

  private String ready(FilterState state, Stay stay) {
    String until = stay.usefulUntil().map(moments::at).orElse("");
    return texts.get("where.ready", state.id(), stay.dish(), until);
  }
}
