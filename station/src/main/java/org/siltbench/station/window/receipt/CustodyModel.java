package org.siltbench.station.window.receipt;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;
import org.siltbench.station.life.TripState;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.issue.Custody;
import org.siltbench.station.work.issue.CustodyLine;
import org.siltbench.station.work.issue.TripList;

/** One line each time bags change hands. */
final class CustodyModel {

  private static final int MOST_BAGS = 100_000;

  private final Desk desk;
  private final Texts texts;
  private final ObservableList<String> trips = FXCollections.observableArrayList();
  private final ObservableList<CustodyLine> lines = FXCollections.observableArrayList();
  final StringProperty trip = new SimpleStringProperty("");
  final StringProperty relinquished = new SimpleStringProperty("");
  final StringProperty received = new SimpleStringProperty("");
  final StringProperty bags = new SimpleStringProperty("");
  final StringProperty seals = new SimpleStringProperty("");
  final StringProperty temperature = new SimpleStringProperty("");
  final StringProperty time = new SimpleStringProperty("");

  CustodyModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(CustodyModel.class);
    trip.subscribe(this::refresh);
    desk.signOn().initials().subscribe(this::proposed);
  }

  private void proposed(String initials) {
    if (received.get().isEmpty()) {
      received.set(initials);
    }
  }

  /** Proposes the count of the bags that were scanned. */
  void counted(int scanned) {
    if (scanned > 0) {
      bags.set(Integer.toString(scanned));
    }
  }

  ObservableList<String> trips() {
    return trips;
  }

  ObservableList<CustodyLine> lines() {
    return lines;
  }

  void refresh() {
    String wanted = trip.get();
    desk.work().run(() -> look(wanted), this::show);
  }

  private record Look(List<String> trips, List<CustodyLine> lines) {}

  private Look look(String wanted) {
    List<TripState> all = TripList.all(desk.lab().register());
    List<CustodyLine> found = new ArrayList<>();
    all.stream()
        .filter(one -> one.name().equals(wanted))
        .forEach(one -> found.addAll(CustodyLine.of(one)));
    return new Look(all.stream().map(TripState::name).toList(), found);
  }

  private void show(Look found) {
    if (!trips.equals(found.trips())) {
      trips.setAll(found.trips());
    }
    lines.setAll(found.lines());
    if (trip.get().isEmpty() && !trips.isEmpty()) {
      trip.set(trips.get(trips.size() - 1));
    }
  }

  private record Said(
      String trip,
      String relinquished,
      String received,
      String bags,
      String seals,
      String temperature,
      String time) {}

  /** Records the line. */
  void record() {
    Said said =
        new Said(
            trip.get(),
            relinquished.get(),
            received.get(),
            bags.get(),
            seals.get().strip(),
            temperature.get(),
            time.get());
    desk.notices().clear(ReceiptModel.ABOUT);
    desk.work().run(() -> custody(said).record(desk.lab()), done -> recorded(), this::refuse);
  }

  private Custody custody(Said said) {
    return new Custody(
        said.trip(),
        said.relinquished(),
        said.received(),
        Typed.past(texts.get("time"), said.time(), desk.clock()),
        Typed.whole(texts.get("name.bags"), said.bags(), 0, 0, MOST_BAGS),
        said.seals().isEmpty() ? null : said.seals(),
        Typed.decimal(texts.get("name.cool"), said.temperature()));
  }

  private void recorded() {
    relinquished.set("");
    seals.set("");
    temperature.set("");
    time.set("");
    desk.notices().show(Notice.note(ReceiptModel.ABOUT, texts.get("custody.done")));
    desk.cues().give(Cues.Cue.RECORDED);
    desk.changed();
  }

  private void refuse(Problem problem) {
    desk.notices().show(ReceiptModel.ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }
}
