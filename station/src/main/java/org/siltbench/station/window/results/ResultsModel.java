package org.siltbench.station.window.results;

import java.nio.file.Path;
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
import org.siltbench.station.window.desk.BatchChoice;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Doing;
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
  private final BatchChoice batch;
  private final Doing doing;
  private final ReadOnlyObjectWrapper<Shown> shown = new ReadOnlyObjectWrapper<>(Shown.NOTHING);
  private final ReadOnlyStringWrapper wanted = new ReadOnlyStringWrapper("");
  private final ObservableList<Path> files = FXCollections.observableArrayList();

  ResultsModel(Desk desk) {
    this.desk = desk;
    this.batch = new BatchChoice(desk, this::calculate);
    this.doing = new Doing(desk);
    desk.changesInFront("results", this::refresh);
  }

  BatchChoice batch() {
    return batch;
  }

  ReadOnlyObjectProperty<Shown> shown() {
    return shown.getReadOnlyProperty();
  }

  /** How far the writing is. */
  Doing doing() {
    return doing;
  }

  /** The files written last. */
  ObservableList<Path> files() {
    return files;
  }

  /** Looks again: which batches there are, and what the one chosen gives. */
  void refresh() {
    batch.refresh();
  }

  /** Chooses a batch. */
  void choose(BatchState one) {
    if (batch.choose(one)) {
      files.clear();
    }
  }

  /** A bag was scanned: its batch comes, and its line is chosen. */
  boolean scanned(BagScan bag) {
    Optional<BatchState> its = batch.of(bag);
    its.ifPresent(this::choose);
    wanted.set("");
    wanted.set(its.isPresent() ? bag.filter().text() : "");
    return its.isPresent();
  }

  /** The filter whose line is wanted. */
  ReadOnlyStringProperty wanted() {
    return wanted.getReadOnlyProperty();
  }

  private void calculate() {
    String code = batch.code();
    if (code.isEmpty()) {
      shown.set(Shown.NOTHING);
      return;
    }
    desk.work()
        .run(
            () -> ResultSheet.of(desk.lab(), desk.methods(), code),
            sheet -> shown.set(new Shown(Optional.of(sheet), Optional.empty())),
            problem -> shown.set(new Shown(Optional.empty(), Optional.of(problem))));
  }

  /** The folder that is offered for the files of this batch. */
  String usualFolder() {
    return desk.lab().folder().resolve("results").resolve(batch.code()).toString();
  }

  /** Writes tables, report and pictures, as the command does. */
  void write(String folder, String client) {
    String code = batch.code();
    if (code.isEmpty()) {
      return;
    }
    doing.begin();
    desk.work()
        .run(
            () -> {
              BatchState state = Batches.require(desk.lab().register(), code);
              BatchResults results = BatchResults.of(desk.lab(), desk.methods(), state);
              return ResultFiles.write(
                  desk.lab(), results, Path.of(folder.strip()), client, false, doing);
            },
            this::written,
            problem -> {
              doing.end();
              desk.notices().show("results", problem);
            });
  }

  private void written(List<Path> now) {
    doing.end();
    files.setAll(now);
    desk.notices()
        .show(
            Notice.note(
                "results",
                desk.texts(ResultsModel.class)
                    .get("written", now.size(), String.valueOf(now.get(0).getParent()))));
  }
}
