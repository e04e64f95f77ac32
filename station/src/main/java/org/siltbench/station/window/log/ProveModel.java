package org.siltbench.station.window.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Anchor;
import org.siltbench.station.bench.VerifyLab;
import org.siltbench.station.ledger.Position;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Doing;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.log.LogFile;

/** The ledger proved whole, and the log sheet of the batch. */
final class ProveModel {

  private final Desk desk;
  private final Texts texts;
  private final Doing doing;
  private final ReadOnlyObjectWrapper<Optional<VerifyLab.Report>> report =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private @Nullable BatchState batch;
  final StringProperty paper = new SimpleStringProperty("");

  ProveModel(Desk desk) {
    this.desk = desk;
    this.texts = desk.texts(ProveModel.class);
    this.doing = new Doing(desk);
  }

  /** What was found last. */
  ReadOnlyObjectProperty<Optional<VerifyLab.Report>> report() {
    return report.getReadOnlyProperty();
  }

  Doing doing() {
    return doing;
  }

  void of(@Nullable BatchState chosen) {
    batch = chosen;
  }

  /** Reads every line of every ledger; a hash from a paper is held against it if one is typed. */
  void verify() {
    String printed = paper.get().strip();
    desk.notices().clear(LogModel.ABOUT);
    doing.begin();
    desk.work()
        .run(
            () -> verified(printed),
            this::show,
            problem -> {
              doing.end();
              refuse(problem);
            });
  }

  private VerifyLab.Report verified(String printed) {
    List<Anchor> anchors = new ArrayList<>();
    if (!printed.isEmpty()) {
      anchors.add(VerifyLab.paper("", printed));
    }
    long all = desk.lab().ledgers().values().stream().mapToLong(Position::seq).sum();
    return VerifyLab.of(desk.lab().folder(), anchors, (what, done) -> read(done, all));
  }

  private void read(long done, long of) {
    if (!doing.goesOn("lines", (int) Math.min(done, of), (int) Math.max(1, of))) {
      throw new Problem.Refused(
          texts.get("stopped"), texts.get("stopped.safe"), texts.get("stopped.next"));
    }
  }

  private void show(VerifyLab.Report found) {
    doing.end();
    report.set(Optional.of(found));
    desk.cues().give(found.ok() ? Cues.Cue.RECORDED : Cues.Cue.ATTENTION);
  }

  /** Draws the log sheet into the papers. */
  void sheet() {
    BatchState of = batch;
    if (of == null) {
      refuse(new Problem.WrongUse(texts.get("no.batch"), texts.get("no.batch.next")));
      return;
    }
    desk.work()
        .run(
            () -> LogFile.write(desk.lab(), desk.methods(), of),
            file -> {
              desk.notices().show(Notice.note(LogModel.ABOUT, texts.get("sheet.is", file)));
              desk.cues().give(Cues.Cue.RECORDED);
            },
            this::refuse);
  }

  private void refuse(Problem problem) {
    desk.notices().show(LogModel.ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }
}
