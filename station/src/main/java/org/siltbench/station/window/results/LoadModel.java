package org.siltbench.station.window.results;

import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.Spans;
import org.siltbench.station.work.StatedTimes;
import org.siltbench.station.work.load.BatchLoad;
import org.siltbench.station.work.load.LoadFiles;
import org.siltbench.station.work.load.LoadSheet;
import org.siltbench.station.work.load.LoadUnit;
import org.siltbench.station.work.load.Loads;
import org.siltbench.station.work.paper.Imprints;

/** The load of the chosen batch under a table of discharge. */
final class LoadModel {

  /** What the person typed. */
  record Asked(
      String discharge,
      String from,
      String to,
      String flowStep,
      String sampleStep,
      LoadUnit unit) {}

  /** The loads, and the sentences that go with them. */
  record Answer(List<LoadSheet> sheets, List<Words> notes) {}

  private final Desk desk;
  private final ResultsModel results;
  private final ReadOnlyObjectWrapper<Optional<Answer>> answer =
      new ReadOnlyObjectWrapper<>(Optional.empty());

  LoadModel(Desk desk, ResultsModel results) {
    this.desk = desk;
    this.results = results;
    results.batch().batch().subscribe(one -> answer.set(Optional.empty()));
  }

  ReadOnlyObjectProperty<Optional<Answer>> answer() {
    return answer.getReadOnlyProperty();
  }

  /** Calculates it. */
  void calculate(Asked asked) {
    desk.work()
        .run(
            () -> {
              Loads loads = loads(asked);
              return new Answer(
                  LoadSheet.of(loads, asked.unit(), desk.clock().getZone()), loads.notes());
            },
            now -> {
              desk.notices().clear("load");
              answer.set(Optional.of(now));
            },
            problem -> desk.notices().show("load", problem));
  }

  /** Calculates it and writes its files. */
  void write(Asked asked, String folder) {
    desk.work()
        .run(
            () ->
                LoadFiles.write(
                    loads(asked), asked.unit(), Path.of(folder.strip()), Imprints.of(desk.lab())),
            files ->
                desk.notices()
                    .show(
                        Notice.note(
                            "load",
                            desk.texts(LoadModel.class)
                                .get("written", files.size(), folder.strip()))),
            problem -> desk.notices().show("load", problem));
  }

  private Loads loads(Asked asked) {
    String code = results.batch().code();
    if (asked.discharge().isBlank()) {
      throw new Problem.WrongUse(ResultsSays.NO_DISCHARGE);
    }
    return BatchLoad.whole(step(asked.flowStep()), step(asked.sampleStep()))
        .between(moment(asked.from()), moment(asked.to()))
        .of(desk.lab(), desk.methods(), code, Path.of(asked.discharge().strip()));
  }

  private static Duration step(String text) {
    return Spans.parse(text);
  }

  private @Nullable OffsetDateTime moment(String text) {
    if (text.isBlank()) {
      return null;
    }
    return StatedTimes.parse(text, desk.clock())
        .orElseThrow(() -> new Problem.WrongUse(ResultsSays.NO_TIME, text));
  }
}
