package org.siltbench.station.window.prepare;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.LabelPrinter;
import org.siltbench.station.Problem;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.field.SheetFiles;
import org.siltbench.station.work.label.BagLabels;
import org.siltbench.station.work.label.LabelJob;
import org.siltbench.station.work.paper.PagePrint;
import org.siltbench.station.work.paper.PaperFolder;

/** Bag labels and the field sheet of the chosen batch, as files or on a queue. */
final class PapersModel {

  private final Desk desk;
  private final Texts texts;
  private final Told told;
  private final ReadOnlyObjectProperty<Optional<BatchState>> chosen;
  private final ObservableList<String> queues = FXCollections.observableArrayList();
  private final ObservableList<String> stocks =
      FXCollections.observableArrayList(
          MediaCatalog.builtIn().stream().map(media -> media.name()).toList());
  final ObservableList<String> codes =
      FXCollections.observableArrayList("data-matrix", "qr", "code-128");
  final StringProperty media = new SimpleStringProperty("");
  final StringProperty code = new SimpleStringProperty("data-matrix");
  final StringProperty dpi = new SimpleStringProperty("");
  final StringProperty startAt = new SimpleStringProperty("1");
  final StringProperty queue = new SimpleStringProperty("");
  final StringProperty sheetQueue = new SimpleStringProperty("");
  final BooleanProperty onlyNew = new SimpleBooleanProperty(true);
  final BooleanProperty slip = new SimpleBooleanProperty();

  PapersModel(Desk desk, ReadOnlyObjectProperty<Optional<BatchState>> chosen) {
    this.desk = desk;
    this.texts = desk.texts(PapersModel.class);
    this.told = new Told(desk);
    this.chosen = chosen;
    media.set(desk.prefs().get(Prefs.Name.MEDIA));
    dpi.set(desk.prefs().get(Prefs.Name.DPI));
  }

  ObservableList<String> queues() {
    return queues;
  }

  ObservableList<String> stocks() {
    return stocks;
  }

  /** Asks the system for its queues. */
  void shown() {
    desk.printing()
        .run(
            LabelPrinter::queues,
            found -> {
              queues.setAll(found);
              queue.set(known(found, desk.prefs().get(Prefs.Name.PRINTER)));
              sheetQueue.set(known(found, desk.prefs().get(Prefs.Name.PAPER_PRINTER)));
            });
  }

  private static String known(List<String> found, String wanted) {
    return found.contains(wanted) ? wanted : "";
  }

  private record Setup(BatchState batch, LabelJob.Manner manner, boolean onlyNew) {}

  private Optional<Setup> setup() {
    told.clear();
    try {
      LabelJob.Manner manner =
          new LabelJob.Manner(
              media.get(),
              Typed.whole(texts.get("said.dpi"), dpi.get(), 300, 72, 2400),
              code.get(),
              Typed.whole(texts.get("said.start"), startAt.get(), 1, 1, 1000),
              slip.get());
      return batch().map(batch -> new Setup(batch, manner, onlyNew.get()));
    } catch (Problem e) {
      told.refuse(e);
      return Optional.empty();
    }
  }

  private Optional<BatchState> batch() {
    if (chosen.get().isEmpty()) {
      told.refuse(new Problem.WrongUse(texts.get("no.batch"), texts.get("next.batch")));
    }
    return chosen.get();
  }

  private Method method(BatchState batch) {
    return desk.methods().inForce(desk.lab().register(), batch.method());
  }

  /** Draws the labels into the papers. */
  void labelFile() {
    setup()
        .ifPresent(
            with ->
                desk.work()
                    .run(
                        () -> drawn(with),
                        file -> told.done(texts.get("labels.file", file)),
                        told::refuse));
  }

  private Path drawn(Setup with) {
    LabelJob job = new LabelJob(desk.lab(), with.batch(), method(with.batch()));
    List<BagLabels.Ready> ready = job.ready(List.of(), with.onlyNew());
    Path file = PaperFolder.place(desk.lab(), "labels-" + with.batch().code() + ".pdf");
    job.toFile(ready, with.manner(), file);
    return file;
  }

  /** Sends the labels to the queue. */
  void labelPrint() {
    String to = queue.get();
    keep(Prefs.Name.PRINTER, to);
    setup()
        .ifPresent(
            with ->
                desk.printing()
                    .run(
                        () -> printed(with, to),
                        count -> told.done(texts.get("labels.printed", count, to)),
                        told::refuse));
  }

  private int printed(Setup with, String to) {
    LabelJob job = new LabelJob(desk.lab(), with.batch(), method(with.batch()));
    List<BagLabels.Ready> ready = job.ready(List.of(), with.onlyNew());
    job.toQueue(ready, with.manner(), to);
    return ready.size();
  }

  private void keep(Prefs.Name name, String queue) {
    desk.work()
        .run(
            () -> {
              desk.prefs().put(name, queue);
              return queue;
            },
            kept -> {});
  }

  /** Makes the field sheet, as a PDF and as a table. */
  void sheetFile() {
    sheet(files -> files, files -> texts.get("sheet.file", files.paper(), files.table()));
  }

  /** The same, and sends the PDF to the queue. */
  void sheetPrint() {
    String to = sheetQueue.get();
    keep(Prefs.Name.PAPER_PRINTER, to);
    sheet(
        files -> {
          PagePrint.print(to, files.paper(), texts.get("sheet.title"));
          return files;
        },
        files -> texts.get("sheet.printed", files.filters(), to));
  }

  private void sheet(Function<SheetFiles, SheetFiles> more, Function<SheetFiles, String> words) {
    told.clear();
    batch()
        .ifPresent(
            batch ->
                desk.printing()
                    .run(
                        () -> more.apply(SheetFiles.write(desk.lab(), batch, method(batch), "")),
                        files -> told.made(words.apply(files)),
                        told::refuse));
  }
}
