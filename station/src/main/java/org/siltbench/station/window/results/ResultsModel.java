package org.siltbench.station.window.results;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.results.BatchResults;
import org.siltbench.station.work.results.ResultFiles;
import org.siltbench.station.work.results.ResultSheet;
import org.siltbench.station.work.scan.BagScan;

/** Which batch, its results as they follow from the ledger now, and the files that leave. */
final class ResultsModel {

  /** The results, or why there are none. */
  record Shown(Optional<ResultSheet> sheet, Optional<Problem> problem) {
    static final Shown NOTHING = new Shown(Optional.empty(), Optional.empty());
  }

  private final Desk desk;
  private final ObservableList<BatchState> batches = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<Optional<BatchState>> batch =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>(Shown.NOTHING);
  private final ReadOnlyStringWrapper wanted = new ReadOnlyStringWrapper("");
  private final ObservableList<Path> files = FXCollections.observableArrayList();

  ResultsModel(Desk desk) {
    this.desk = desk;
    desk.changesInFront("results", this::refresh);
  }

  ObservableList<BatchState> batches() {
    return batches;
  }

  ReadOnlyObjectProperty<Optional<BatchState>> batch() {
    return batch.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Shown> shown() {
    return shown.getReadOnlyProperty();
  }

  /** The files written last. */
  ObservableList<Path> files() {
    return files;
  }

  /** Looks again: which batches there are, and what the one chosen gives. */
  void refresh() {
    desk.work().run(() -> newestFirst(Batches.all(desk.lab().register())), this::list);
  }

  private static List<BatchState> newestFirst(List<BatchState> all) {
    List<BatchState> out = new ArrayList<>(all);
    Collections.reverse(out);
    return out;
  }

  private void list(List<BatchState> now) {
    String code = batch.get().map(BatchState::code).orElse("");
    if (!now.equals(batches)) {
      batches.setAll(now);
    }
    batch.set(
        now.stream()
            .filter(one -> one.code().equals(code))
            .findFirst()
            .or(() -> now.stream().findFirst()));
    calculate();
  }

  /** Chooses a batch. */
  void choose(BatchState one) {
    if (!batch.get().equals(Optional.of(one))) {
      batch.set(Optional.of(one));
      files.clear();
      calculate();
    }
  }

  /** A bag was scanned: its batch comes, and its line is chosen. */
  boolean scanned(BagScan bag) {
    String id = bag.filter().text();
    Optional<BatchState> its =
        batches.stream().filter(one -> one.filters().containsKey(id)).findFirst();
    its.ifPresent(this::choose);
    wanted.set("");
    wanted.set(its.isPresent() ? id : "");
    return its.isPresent();
  }

  /** The filter whose line is wanted. */
  ReadOnlyStringProperty wanted() {
    return wanted.getReadOnlyProperty();
  }

  private void calculate() {
    if (batch.get().isEmpty()) {
      shown.set(Shown.NOTHING);
      return;
    }
    String code = batch.get().get().code();
    desk.work()
        .run(
            () -> ResultSheet.of(desk.lab(), desk.methods(), code),
            sheet -> shown.set(new Shown(Optional.of(sheet), Optional.empty())),
            problem -> shown.set(new Shown(Optional.empty(), Optional.of(problem))));
  }

  /** The folder that is offered for the files of this batch. */
  String usualFolder() {
    String code = batch.get().map(BatchState::code).orElse("");
    return desk.lab().folder().resolve("results").resolve(code).toString();
  }

  /** Writes tables, report and pictures, as the command does. */
  void write(String folder, String client) {
    if (batch.get().isEmpty()) {
      return;
    }
    String code = batch.get().get().code();
    desk.work()
        .run(
            () -> {
              BatchState state = Batches.require(desk.lab().register(), code);
              BatchResults results = BatchResults.of(desk.lab(), desk.methods(), state);
              return ResultFiles.write(desk.lab(), results, Path.of(folder.strip()), client);
            },
            this::written,
            problem -> desk.notices().show("results", problem));
  }

  private void written(List<Path> now) {
    files.setAll(now);
    desk.notices()
        .show(
            Notice.note(
                "results",
                desk.texts(ResultsModel.class)
                    .get("written", now.size(), String.valueOf(now.get(0).getParent()))));
  }
}
