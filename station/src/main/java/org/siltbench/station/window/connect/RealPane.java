package org.siltbench.station.window.connect;

import java.util.function.Consumer;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.window.look.Grid;

/** A real balance in three cards: where it is, how it talks, use it. */
final class RealPane extends StackPane {

  private final FindModel find;
  private final LessonModel lesson;
  private final Texts texts;
  private final TextField spec = new TextField();
  private final TextField name = new TextField();
  private final Label state = Controls.label("subtitle");
  private final Label show = Controls.label("subtitle");
  private final TextArea typed = new TextArea();
  private final Button fromTyped;
  private final Button stop;
  private final Button listen;
  private final Button skip;
  private final Button save;
  private final Consumer<String> use;

  RealPane(FindModel find, LessonModel lesson, Texts texts, Consumer<String> use) {
    this.find = find;
    this.lesson = lesson;
    this.texts = texts;
    this.use = use;
    stop = Controls.button(texts, "find.stop", find::stop);
    listen = Controls.primary(texts, "lesson.listen", lesson::listen);
    skip = Controls.button(texts, "lesson.skip", lesson::skip);
    fromTyped = Controls.primary(texts, "lesson.typed", lesson::learnTyped);
    save = Controls.primary(texts, "lesson.save", () -> lesson.save(name.getText()));
    VBox cards = new VBox(where(), how(), use());
    cards.getStyleClass().add("sheet");
    getChildren().add(new FocusScroll(cards));
    find.state().subscribe(this::show);
    find.found().subscribe(this::fill);
    lesson.state().subscribe(this::show);
    lesson.situation().subscribe(now -> show(lesson.state().get()));
    lesson.usable().subscribe(this::fill);
  }

  /** True while what is typed goes to the lesson. */
  boolean balanceTypes() {
    return lesson.state().get() == LessonModel.State.TYPING && typed.isFocused();
  }

  /** Leads the cursor back to the lesson; false if no balance types. */
  boolean takeCursor() {
    boolean wanted = lesson.state().get() == LessonModel.State.TYPING;
    if (wanted) {
      Controls.focus(typed);
    }
    return wanted;
  }

  private void fill(String balance) {
    if (!balance.isEmpty()) {
      spec.setText(balance);
    }
  }

  private VBox card(Node... nodes) {
    VBox card = new VBox(nodes);
    card.getStyleClass().add("card");
    return card;
  }

  private VBox where() {
    Grid<PortFacts> ports =
        new Grid<>(texts, "ports", "ports.none", find.ports())
            .column("path", 30, PortFacts::path)
            .column("called", 45, PortFacts::name)
            .column("usb", 25, PortFacts::usb)
            .chosen(port -> spec.setText(port.spec().toString()));
    ports.getStyleClass().addAll("tight", "connect-ports");
    VBox field = Controls.field(texts, "spec", spec);
    HBox.setHgrow(field, Priority.ALWAYS);
    HBox acts =
        new HBox(
            Controls.primary(texts, "find.all", () -> find.search("")),
            Controls.button(texts, "find.one", () -> find.search(spec.getText())),
            stop);
    acts.getStyleClass().add("level");
    state.setId("find.state");
    HBox ask = new HBox(field, acts);
    ask.getStyleClass().add("line");
    HBox heard = new HBox(state, bar(find.progress()));
    heard.getStyleClass().add("level");
    return card(
        Controls.text(texts, "where", "row-title"),
        Controls.text(texts, "where.hint", "hint"),
        ports,
        ask,
        heard,
        evidence("find.evidence", find.evidence()));
  }

  private static ProgressBar bar(javafx.beans.value.ObservableValue<Number> part) {
    ProgressBar bar = new ProgressBar();
    bar.progressProperty().bind(part);
    return bar;
  }

  private TextArea evidence(String key, ObservableList<String> lines) {
    TextArea area = new TextArea();
    area.setId(key);
    area.setAccessibleText(texts.get(key));
    area.setPromptText(texts.get(key));
    area.setEditable(false);
    area.setPrefRowCount(6);
    area.getStyleClass().add("connect-evidence");
    lines.addListener(
        (ListChangeListener<String>) change -> area.setText(String.join("\n", lines)));
    return area;
  }

  private VBox how() {
    show.setId("lesson.show");
    HBox acts =
        new HBox(
            Controls.button(texts, "lesson.begin", () -> lesson.begin(spec.getText())),
            listen,
            skip,
            fromTyped,
            bar(lesson.progress()));
    acts.getStyleClass().add("level");
    HBox keep = new HBox(Controls.field(texts, "format.name", name), save);
    keep.getStyleClass().add("line");
    return card(
        Controls.text(texts, "how", "row-title"),
        Controls.text(texts, "how.hint", "hint"),
        acts,
        show,
        whatIsTyped(),
        evidence("lesson.evidence", lesson.evidence()),
        keep);
  }

  private Node whatIsTyped() {
    typed.setPrefRowCount(9);
    typed.getStyleClass().add("connect-evidence");
    typed.textProperty().bindBidirectional(lesson.typed);
    VBox field = Controls.captioned(texts, "typed", typed);
    field.managedProperty().bind(field.visibleProperty());
    field.visibleProperty().bind(lesson.state().isEqualTo(LessonModel.State.TYPING));
    return field;
  }

  private VBox use() {
    return card(
        Controls.text(texts, "use", "row-title"),
        Controls.text(texts, "use.hint", "hint"),
        Controls.primary(texts, "use.go", () -> use.accept(spec.getText().strip())));
  }

  private void show(FindModel.State now) {
    state.setText(texts.get("find." + now.name()));
    stop.setDisable(now != FindModel.State.SEARCHING);
  }

  private void show(LessonModel.State now) {
    boolean asks = now == LessonModel.State.SHOW || now == LessonModel.State.LISTENING;
    show.setText(
        asks
            ? texts.get("show." + lesson.situation().get().name())
            : texts.get("lesson." + now.name()));
    listen.setDisable(now != LessonModel.State.SHOW);
    skip.setDisable(now != LessonModel.State.SHOW);
    save.setDisable(now != LessonModel.State.LEARNED);
    Controls.shown(fromTyped, now == LessonModel.State.TYPING);
    takeCursor();
  }
}
