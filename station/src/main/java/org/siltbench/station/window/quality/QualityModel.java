package org.siltbench.station.window.quality;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.window.desk.BatchChoice;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.correct.Hold;
import org.siltbench.station.work.release.Readiness;
import org.siltbench.station.work.release.Release;
import org.siltbench.station.work.results.BatchResults;
import org.siltbench.station.work.results.ResultFiles;
import org.siltbench.station.work.scan.BagScan;

/** A batch before and after its release: the questions, the holds, the reports. */
final class QualityModel {

  private static final String ID = "quality";

  private final Desk desk;
  private final Texts texts;
  private final BatchChoice batch;
  private final ReadOnlyObjectWrapper<Optional<Readiness>> readiness =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  QualityModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(QualityModel.class);
    this.batch = new BatchChoice(desk, this::look);
    desk.changesInFront(ID, this::refresh);
  }

  BatchChoice batch() {
    return batch;
  }

  ReadOnlyObjectProperty<Optional<Readiness>> readiness() {
    return readiness.getReadOnlyProperty();
  }

  /** Looks again. */
  void refresh() {
    batch.refresh();
  }

  /** A bag was scanned: its batch comes. */
  boolean scanned(BagScan bag) {
    Optional<BatchState> its = batch.of(bag);
    its.ifPresent(batch::choose);
    return its.isPresent();
  }

  private void look() {
    String code = batch.code();
    if (code.isEmpty()) {
      readiness.set(Optional.empty());
      return;
    }
    desk.work()
        .run(
            () -> Readiness.of(desk.lab(), desk.methods(), code),
            now -> readiness.set(Optional.of(now)),
            problem -> {
              readiness.set(Optional.empty());
              desk.notices().show(ID, problem);
            });
  }

  /** Holds results back, or sets them free. */
  void hold(List<String> filters, boolean lift, String reason) {
    act(
        () -> {
          new Hold(filters, lift, reason).record(desk.lab());
          return texts.get(lift ? "said.lifted" : "said.held", filters.size());
        });
  }

  /**
   * Releases the batch.
   *
   * @param report the report's number; empty for the next one
   * @param partial unfinished filters follow in an amended report
   * @param accept why a rule is set aside; empty if none is
   */
  void release(String report, boolean partial, String accept) {
    String code = batch.code();
    act(
        () -> {
          Fields data =
              Fields.of(
                  new Release(code, report.strip(), partial, accept.strip())
                      .record(desk.lab(), desk.methods()));
          boolean alone = data.text("analyst").equals(data.text("approver"));
          return texts.get(alone ? "said.released.alone" : "said.released", data.text("report"));
        });
  }

  private void act(Supplier<String> act) {
    desk.work()
        .run(
            act,
            said -> {
              desk.notices().show(Notice.note(ID, said));
              desk.changed();
              refresh();
            },
            this::refused);
  }

  private void refused(Problem problem) {
    desk.notices().show(ID, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }

  /** Writes the report as PDF, named by its number. */
  void writeReport(String client) {
    String code = batch.code();
    Path folder = desk.lab().folder().resolve("results").resolve(code);
    desk.work()
        .run(
            () -> {
              BatchState state = Batches.require(desk.lab().register(), code);
              return ResultFiles.report(
                  desk.lab(), BatchResults.of(desk.lab(), desk.methods(), state), folder, client);
            },
            file -> desk.notices().show(Notice.note(ID, texts.get("said.written", file))),
            this::refused);
  }
}
