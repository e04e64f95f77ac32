package org.siltbench.station.window.receipt;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.exchange.Answers;
import org.siltbench.station.work.exchange.Doubt;
import org.siltbench.station.work.exchange.FieldImport;
import org.siltbench.station.work.exchange.ImportedNotes;
import org.siltbench.station.work.exchange.Preview;
import org.siltbench.station.work.receipt.Box;

/** Field notes from a file: how it is understood, every doubt, and only then into the box. */
final class ImportModel {

  /** What a file gave. */
  record Taken(List<Box.Note> notes, List<String> unused) {}

  private final Desk desk;
  private final Texts texts;
  private final Consumer<Taken> taken;
  private final List<String> answers = new ArrayList<>();
  private final ReadOnlyObjectWrapper<Optional<Preview>> preview =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final List<Preview> toRemember = new ArrayList<>();
  final StringProperty file = new SimpleStringProperty("");

  ImportModel(Desk desk, Consumer<Taken> taken) {
    this.desk = desk;
    this.texts = desk.texts(ImportModel.class);
    this.taken = taken;
  }

  ReadOnlyObjectProperty<Optional<Preview>> preview() {
    return preview.getReadOnlyProperty();
  }

  /** Reads the file anew, without earlier answers of this sitting. */
  void open() {
    answers.clear();
    look();
  }

  /** The answers that settle a doubt; one for each column where any column could be meant. */
  static List<String> answers(Preview preview, Doubt doubt) {
    List<String> out = new ArrayList<>();
    for (String answer : doubt.settle()) {
      if (answer.startsWith("NAME=")) {
        preview.headings().stream()
            .filter(heading -> !heading.name().isEmpty())
            .forEach(heading -> out.add(heading.name() + answer.substring(4)));
      } else {
        out.add(answer);
      }
    }
    return out;
  }

  /** Settles a doubt and reads again. */
  void settle(String answer) {
    answers.add(answer);
    look();
  }

  private void look() {
    String name = file.get().strip();
    List<String> given = List.copyOf(answers);
    desk.notices().clear(ReceiptModel.ABOUT);
    desk.work()
        .run(
            () -> look(name, given),
            found -> preview.set(Optional.of(found)),
            problem -> {
              preview.set(Optional.empty());
              refuse(problem);
            });
  }

  private Preview look(String name, List<String> given) {
    Path folder = desk.lab().folder();
    try {
      return new FieldImport(folder).look(folder.resolve(name), Answers.parse(given));
    } catch (IOException | InvalidPathException e) {
      throw new Problem.Outside(
          texts.get("unreadable", name),
          texts.get("unreadable.safe"),
          texts.get("unreadable.next"),
          e);
    }
  }

  private void refuse(Problem problem) {
    desk.notices().show(ReceiptModel.ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }

  /** Puts the lines into the box; refused while a doubt stands. */
  void take() {
    Optional<Preview> now = preview.get();
    if (now.isEmpty()) {
      return;
    }
    desk.work()
        .run(
            () -> ImportedNotes.of(now.get()),
            notes -> {
              toRemember.add(now.get());
              preview.set(Optional.empty());
              file.set("");
              desk.notices()
                  .show(Notice.note(ReceiptModel.ABOUT, texts.get("imported", notes.size())));
              taken.accept(new Taken(notes, List.of()));
            },
            this::refuse);
  }

  /** What was settled counts for the next file of this kind, once the box was taken in. */
  void remember() {
    List<Preview> kept = List.copyOf(toRemember);
    toRemember.clear();
    desk.work()
        .run(
            () -> {
              kept.forEach(this::remember);
              return kept.size();
            },
            done -> {});
  }

  private void remember(Preview one) {
    try {
      new FieldImport(desk.lab().folder()).remember(one, desk.clock());
    } catch (IOException e) {
      throw new Problem.Outside(
          texts.get("forgotten"), texts.get("forgotten.safe"), texts.get("forgotten.next"), e);
    }
  }
}
