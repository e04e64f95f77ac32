package org.siltbench.station.window.connect;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.learn.Learned;
import org.siltbench.balance.learn.Situation;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.work.connect.FormatLesson;
import org.siltbench.station.work.connect.LessonWords;
import org.siltbench.station.work.weigh.Scale;

/** Learns the line format of a balance, situation by situation; saves only when it is told to. */
final class LessonModel {

  /** How the lesson stands. */
  enum State {
    IDLE,
    TYPING,
    SHOW,
    LISTENING,
    LEARNED,
    UNSAFE,
    SAVED
  }

  private static final String ABOUT = "connect";

  /** What a balance has typed so far, line by line, exactly as it came. */
  final StringProperty typed = new SimpleStringProperty("");

  private final Desk desk;
  private final FormatLesson.Opener links;
  private final Duration each;
  private final ObservableList<String> evidence = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<State> state = new ReadOnlyObjectWrapper<>(State.IDLE);
  private final ReadOnlyObjectWrapper<Situation> situation =
      new ReadOnlyObjectWrapper<>(Situation.EMPTY);
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
  private final ReadOnlyStringWrapper usable = new ReadOnlyStringWrapper("");
  private @Nullable FormatLesson lesson;
  private @Nullable Learned learned;
  private LinkSpec spec = Scale.parse("practice");

  LessonModel(Desk desk, FormatLesson.Opener links, Duration each) {
    this.desk = desk;
    this.links = links;
    this.each = each;
  }

  /** The evidence, and the format's own lines, as the command line shows them. */
  ObservableList<String> evidence() {
    return evidence;
  }

  ReadOnlyObjectProperty<State> state() {
    return state.getReadOnlyProperty();
  }

  /** What shall be shown to the balance now. */
  ReadOnlyObjectProperty<Situation> situation() {
    return situation.getReadOnlyProperty();
  }

  ReadOnlyDoubleProperty progress() {
    return progress.getReadOnlyProperty();
  }

  /** The balance text with the saved format; empty before. */
  ReadOnlyStringProperty usable() {
    return usable.getReadOnlyProperty();
  }

  /** Connects and asks for the first situation. */
  void begin(String balance) {
    close();
    try {
      spec = Scale.parse(balance);
    } catch (Problem e) {
      desk.notices().show(ABOUT, e);
      return;
    }
    evidence.clear();
    usable.set("");
    LinkSpec link = spec;
    if (link instanceof LinkSpec.Typed) {
      state.set(State.TYPING); // what was typed already stays: more lines tell more
      return;
    }
    aside(
        () -> FormatLesson.beginAgain(link, links, text -> {}),
        begun -> {
          lesson = begun;
          show(FormatLesson.SITUATIONS.get(0));
        });
  }

  /** Something that may meet the world. */
  private interface Job<T> {
    T get() throws IOException, InterruptedException;
  }

  private <T> void aside(Job<T> job, java.util.function.Consumer<T> then) {
    Supplier<Optional<T>> told =
        () -> {
          try {
            return Optional.of(job.get());
          } catch (IOException e) {
            throw FindModel.away(e);
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
          }
        };
    desk.aside().run(told, done -> done.ifPresent(then), this::failed);
  }

  private void failed(Problem problem) {
    state.set(State.IDLE);
    desk.notices().show(ABOUT, problem);
  }

  private void show(Situation next) {
    situation.set(next);
    progress.set(0);
    state.set(State.SHOW);
  }

  /** The person shows it now: listens for a while. */
  void listen() {
    FormatLesson now = lesson;
    if (now == null || state.get() != State.SHOW) {
      return;
    }
    state.set(State.LISTENING);
    Situation what = situation.get();
    aside(
        () -> now.listen(what, each, part -> desk.work().onScreen(() -> progress.set(part))),
        heard -> next());
  }

  /** The person cannot show it. */
  void skip() {
    if (state.get() == State.SHOW) {
      next();
    }
  }

  private void next() {
    int after = FormatLesson.SITUATIONS.indexOf(situation.get()) + 1;
    if (after < FormatLesson.SITUATIONS.size()) {
      show(FormatLesson.SITUATIONS.get(after));
    } else {
      learn();
    }
  }

  /** Tells what can be told from what was heard. */
  void learn() {
    FormatLesson now = lesson;
    if (now == null) {
      return;
    }
    aside(now::learn, this::told);
  }

  /** Tells what can be told from what was typed, as the command does. */
  void learnTyped() {
    if (state.get() != State.TYPING) {
      return;
    }
    List<String> lines = typed.get().lines().filter(line -> !line.isBlank()).toList();
    LinkSpec link = spec;
    aside(() -> FormatLesson.learnTyped(link, lines), this::told);
  }

  private void told(Learned what) {
    learned = what;
    evidence.setAll(
        LessonWords.evidence(what).stream().map(line -> line.in(desk.locale())).toList());
    evidence.addAll(LessonWords.format(what));
    state.set(what.format() == null ? State.UNSAFE : State.LEARNED);
  }

  /** Saves the format under a name. */
  void save(String name) {
    Learned what = learned;
    if (what == null || what.format() == null) {
      return;
    }
    Path formats = desk.lab().folder().resolve("formats");
    LinkSpec link = spec;
    desk.aside()
        .run(
            () -> {
              try {
                return FormatLesson.save(what, name.strip(), formats);
              } catch (IOException e) {
                throw FindModel.away(e);
              } catch (IllegalArgumentException e) {
                throw new Problem.WrongUse(ConnectSays.NO_FORMAT_NAME);
              }
            },
            file -> {
              usable.set(FormatLesson.with(link, name.strip()).toString());
              state.set(State.SAVED);
              typed.set("");
              close();
            },
            problem -> desk.notices().show(ABOUT, problem));
  }

  /** Lets go of the port. */
  void close() {
    FormatLesson now = lesson;
    lesson = null;
    if (now != null) {
      now.cancel();
      aside(
          () -> {
            now.close();
            return now;
          },
          closed -> {});
    }
  }
}
