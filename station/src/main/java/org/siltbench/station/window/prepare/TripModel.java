package org.siltbench.station.window.prepare;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.issue.Issue;
import org.siltbench.station.work.scan.BagScan;

/** Bags out to a trip, and unused ones back: all that can go, or those that are scanned. */
final class TripModel {

  private final Desk desk;
  private final Texts texts;
  private final Told told;
  private final ReadOnlyObjectProperty<Optional<BatchState>> chosen;
  private final ObservableList<FilterState> filters = FXCollections.observableArrayList();
  private final ObservableList<String> scanned = FXCollections.observableArrayList();
  final StringProperty trip = new SimpleStringProperty("");
  final StringProperty to = new SimpleStringProperty("");
  final StringProperty seals = new SimpleStringProperty("");
  final StringProperty out = new SimpleStringProperty("");

  TripModel(Desk desk, ReadOnlyObjectProperty<Optional<BatchState>> chosen) {
    this.desk = desk;
    this.texts = desk.texts(TripModel.class);
    this.told = new Told(desk);
    this.chosen = chosen;
    chosen.subscribe(batch -> anew());
    desk.changes().subscribe(this::refresh);
  }

  /** The filters of the batch that are ready or out. */
  ObservableList<FilterState> filters() {
    return filters;
  }

  /** Those that were scanned, by ID; empty for all. */
  ObservableList<String> scanned() {
    return scanned;
  }

  private void anew() {
    scanned.clear();
    trip.set(chosen.get().map(TripModel::lastTrip).orElse(""));
    refresh();
  }

  private static String lastTrip(BatchState batch) {
    return batch.trips().isEmpty() ? "" : batch.trips().get(batch.trips().size() - 1);
  }

  private void refresh() {
    chosen
        .get()
        .ifPresent(
            batch ->
                desk.work()
                    .run(
                        () -> Filters.ofBatch(desk.lab().register(), batch.code()),
                        all ->
                            filters.setAll(
                                all.stream()
                                    .filter(
                                        one ->
                                            one.status() == Status.PRE_WEIGHED
                                                || one.status() == Status.ISSUED)
                                    .toList())));
  }

  boolean bag(BagScan bag) {
    String id = bag.filter().text();
    if (!scanned.remove(id)) {
      scanned.add(id);
    }
    return true;
  }

  /** Gives out. */
  void issue() {
    String who = to.get().strip();
    String seal = seals.get().strip();
    String when = out.get();
    act(
        (batch, issue, ids) ->
            issue.out(
                desk.methods().inForce(desk.lab().register(), batch.method()),
                ids,
                who.isEmpty() ? null : who,
                Typed.past(texts.get("out"), when, desk.clock()),
                seal.isEmpty() ? null : seal),
        "issued");
  }

  /** Takes back. */
  void back() {
    act((batch, issue, ids) -> issue.back(ids), "back.done");
  }

  private interface Move {
    Entry by(BatchState batch, Issue issue, List<String> ids);
  }

  private void act(Move move, String key) {
    String name = trip.get().strip();
    List<String> ids = List.copyOf(scanned);
    told.clear();
    if (chosen.get().isEmpty()) {
      told.refuse(new Problem.WrongUse(texts.get("no.batch"), texts.get("next.batch")));
      return;
    }
    BatchState batch = chosen.get().get();
    desk.work()
        .run(
            () -> move.by(batch, new Issue(desk.lab(), batch, name), ids),
            entry -> done(texts.get(key, Fields.of(entry).filters("filters").size(), name)),
            told::refuse);
  }

  private void done(String what) {
    scanned.clear();
    to.set("");
    seals.set("");
    out.set("");
    told.done(what);
  }
}
