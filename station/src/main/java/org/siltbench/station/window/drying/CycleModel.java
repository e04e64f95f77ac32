package org.siltbench.station.window.drying;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.work.drying.CyclePlan;
import org.siltbench.station.work.drying.DoorCard;
import org.siltbench.station.work.drying.DryCycles;
import org.siltbench.station.work.drying.DryEnd;
import org.siltbench.station.work.drying.DryStart;
import org.siltbench.station.work.drying.Load;
import org.siltbench.station.work.drying.Purpose;
import org.siltbench.station.work.scan.BagScan;

/** One running cycle: its dishes, its loads, what leaves next; its end, its restart, its card. */
final class CycleModel {

  /** A filter in the oven. */
  record Dish(FilterState state, String dish, int load, boolean leaves) {}

  /** A cycle as it is shown. */
  record Shown(CyclePlan plan, Map<String, FilterState> states, OffsetDateTime now) {}

  private final Desk desk;
  private final Texts texts;
  private final Moments moments;
  private final Runnable over;
  private final ReadOnlyObjectWrapper<Optional<Shown>> shown =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ObservableList<Dish> dishes = FXCollections.observableArrayList();
  private final Set<String> leaving = new LinkedHashSet<>();
  private String id = "";
  private final Gauge gauge = new Gauge();

  CycleModel(Desk desk, Runnable over) {
    this.desk = desk;
    this.texts = desk.texts(CycleModel.class);
    this.moments = new Moments(desk.clock(), desk.locale());
    this.over = over;
  }

  ReadOnlyObjectProperty<Optional<Shown>> shown() {
    return shown.getReadOnlyProperty();
  }

  ObservableList<Dish> dishes() {
    return dishes;
  }

  Gauge gauge() {
    return gauge;
  }

  void open(String cycle) {
    if (!id.equals(cycle)) {
      id = cycle;
      leaving.clear();
      gauge.clear();
    }
    refresh();
  }

  void refresh() {
    String wanted = id;
    desk.work().run(() -> look(wanted), this::show, problem -> over.run());
  }

  private Shown look(String cycle) {
    RegisterView register = desk.lab().register();
    CyclePlan plan = CyclePlan.of(register, desk.methods(), DryCycles.require(register, cycle));
    Map<String, FilterState> states = new LinkedHashMap<>();
    plan.cycle().inside().forEach(f -> states.put(f, Filters.require(register, f)));
    return new Shown(plan, states, OffsetDateTime.now(desk.clock()));
  }

  private void show(Shown found) {
    if (!found.plan().cycle().open()) {
      over.run();
      return;
    }
    leaving.retainAll(found.plan().cycle().inside());
    if (gauge.thermometer.get().isEmpty()) {
      gauge.thermometer.set(found.plan().cycle().thermometer());
    }
    shown.set(Optional.of(found));
    list(found);
  }

  private void list(Shown found) {
    List<Dish> rows = new ArrayList<>();
    for (Load load : found.plan().loads()) {
      for (String filter : load.filters()) {
        FilterState state = found.states().get(filter);
        if (state != null) {
          String dish = found.plan().cycle().dishes().getOrDefault(filter, "");
          rows.add(new Dish(state, dish, load.number(), leaves(load, filter)));
        }
      }
    }
    dishes.setAll(rows);
  }

  /** Those that were scanned leave; if none was, the first load does. */
  private boolean leaves(Load load, String filter) {
    return leaving.isEmpty() ? load.number() == 1 : leaving.contains(filter);
  }

  /** Marks a bag that leaves, or takes the mark away. */
  void bag(BagScan bag, Runnable elsewhere) {
    String filter = bag.filter().text();
    if (dishes.stream().anyMatch(row -> row.state().id().equals(filter))) {
      mark(filter);
    } else {
      elsewhere.run();
    }
  }

  /** Marks the filter in a dish. */
  boolean dish(String number) {
    Optional<Dish> found =
        dishes.stream().filter(row -> row.dish().equalsIgnoreCase(number)).findFirst();
    found.ifPresent(row -> mark(row.state().id()));
    return found.isPresent();
  }

  /** Marks or unmarks. */
  void mark(String filter) {
    if (!leaving.remove(filter)) {
      leaving.add(filter);
    }
    shown.get().ifPresent(this::list);
  }

  /** Marks all that are in it. */
  void markAll() {
    dishes.forEach(row -> leaving.add(row.state().id()));
    shown.get().ifPresent(this::list);
  }

  /** Takes out what leaves. */
  void end() {
    String cycle = id;
    Set<String> only = new LinkedHashSet<>();
    dishes.stream().filter(Dish::leaves).forEach(row -> only.add(row.state().id()));
    Gauge.Said said = gauge.said();
    desk.notices().clear(DryingModel.ABOUT);
    desk.work().run(() -> end(cycle, only, said), this::ended, this::refuse);
  }

  private DryEnd.Ended end(String cycle, Set<String> only, Gauge.Said said) {
    return new DryEnd(cycle, only, said.heat(texts), said.at(texts, desk.clock()))
        .record(desk.lab(), desk.methods());
  }

  private void ended(DryEnd.Ended done) {
    leaving.clear();
    after(done.warnings());
    desk.notices()
        .show(
            Notice.note(
                DryingModel.ABOUT + ".out",
                texts.get(
                    "ended",
                    done.filters().size(),
                    moments.at(done.cooledUntil()),
                    moments.at(done.usefulUntil()))));
  }

  /** Starts the clock anew for all in it: the oven was open, or out of range. */
  void restart() {
    String cycle = id;
    Gauge.Said said = gauge.said();
    desk.notices().clear(DryingModel.ABOUT);
    desk.work().run(() -> restart(cycle, said), done -> after(done.warnings()), this::refuse);
  }

  private DryStart.Started restart(String cycle, Gauge.Said said) {
    String purpose = DryCycles.require(desk.lab().register(), cycle).purpose();
    return new DryStart(
            Map.of(),
            Purpose.of(purpose),
            said.heat(texts),
            said.at(texts, desk.clock()),
            cycle,
            true)
        .record(desk.lab(), desk.methods());
  }

  private void after(List<Words> warnings) {
    gauge.clear();
    desk.changed();
    desk.cues().give(Cues.Cue.RECORDED);
    warnings.forEach(
        warning -> desk.notices().show(Notice.warning(DryingModel.ABOUT, texts.say(warning), "")));
  }

  private void refuse(Problem problem) {
    desk.notices().show(DryingModel.ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }

  /** Draws the card for the oven door. */
  void card() {
    for (Shown now : shown.get().stream().toList()) {
      desk.work()
          .run(
              () -> DoorCard.write(desk.lab(), desk.methods(), now.plan()),
              file ->
                  desk.notices()
                      .show(Notice.note(DryingModel.ABOUT + ".card", texts.get("card.is", file))),
              this::refuse);
    }
  }
}
