package org.siltbench.station.window.receipt;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.life.Role;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Choices;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.receipt.Box;
import org.siltbench.station.work.receipt.Condition;

/** The form for the notes of one bag. */
final class NotesPane extends VBox {

  private static final int ACROSS = 4;

  private final ReceiptModel screen;
  private final NotesModel model;
  private final Texts texts;
  private final Label title = Controls.label("subtitle");
  private final Label said = Controls.label("said-of");
  private final Label consequence = Controls.label("hint");
  private final FlowPane several = new FlowPane();
  private final HBox acts = new HBox();
  private final Map<Condition, ToggleButton> marks = new TreeMap<>();
  private GridPane form = sheet();
  private TextField first = new TextField();

  NotesPane(ReceiptModel screen, Texts texts) {
    this.screen = screen;
    this.model = screen.notes();
    this.texts = texts;
    title.setId("notes-title");
    said.setId("notes-said");
    several.getStyleClass().add("chips");
    VBox inside = new VBox(water(), conditions(), consequence, rest());
    inside.getStyleClass().add("form");
    FocusScroll scroll = new FocusScroll(inside);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    acts.getStyleClass().add("line");
    getStyleClass().addAll("card", "form");
    getChildren().setAll(title, said, several, scroll, acts);
    model.filter().subscribe(this::title);
    model.conditions().subscribe(this::marked);
    model.several().subscribe(this::several);
    acts.getChildren().setAll(Controls.primary(texts, "keep", model::keep));
    several();
    marked();
  }

  private GridPane water() {
    form = sheet();
    first = text("sample");
    add(Controls.field(texts, "sample", first));
    field("site");
    choice("role", List.of(Role.values()).stream().map(Role::code).toList());
    TextField day = new TextField();
    day.textProperty().bindBidirectional(model.day);
    day.setPrefColumnCount(8);
    add(Controls.field(texts, "day", day));
    field("collected");
    field("filtered_from");
    field("filtered_to");
    choice("taken", List.of("aliquot", "whole"));
    field("portions_ml");
    field("left_ml");
    choice("left_to", List.of("discarded", "next"));
    field("volume_ml");
    return form;
  }

  private GridPane rest() {
    form = sheet();
    field("volume_u_ml");
    choice("rinse", List.of("yes", "no"));
    field("pair");
    choice("pair_kind", List.of("field-replicate", "bottle-split", "re-weigh"));
    field("filter_order");
    field("gauge_m");
    field("water_c");
    field("conductivity_us_cm");
    form.add(Controls.field(texts, "remarks", text("remarks")), 0, 2, ACROSS - 1, 1);
    form.add(Controls.field(texts, "by", text("by")), ACROSS - 1, 2);
    return form;
  }

  private static GridPane sheet() {
    GridPane sheet = new GridPane();
    sheet.getStyleClass().add("sheet");
    return sheet;
  }

  private void add(Node node) {
    int at = form.getChildren().size();
    form.add(node, at % ACROSS, at / ACROSS);
  }

  private TextField text(String column) {
    TextField field = new TextField();
    field.setPrefColumnCount(8);
    field.textProperty().bindBidirectional(model.cell(column));
    field.setOnAction(event -> model.keep());
    return field;
  }

  private void field(String column) {
    add(Controls.field(texts, column, text(column)));
  }

  private void choice(String column, List<String> words) {
    List<String> all = new ArrayList<>(words);
    all.add(0, "");
    ComboBox<String> box =
        Choices.of(
            FXCollections.observableArrayList(all),
            word -> word.isEmpty() ? "–" : texts.get("word." + word));
    box.valueProperty().bindBidirectional(model.cell(column));
    box.setMaxWidth(Double.MAX_VALUE);
    add(Controls.captioned(texts, column, box));
  }

  private VBox conditions() {
    FlowPane flow = new FlowPane();
    flow.getStyleClass().addAll("chips", "conditions");
    for (Condition condition : Condition.values()) {
      ToggleButton mark = new ToggleButton(texts.get("condition." + condition.code()));
      mark.setId("condition-" + condition.code());
      mark.setAccessibleText(
          mark.getText() + ", " + texts.get("consequence." + condition.consequence()));
      mark.setOnAction(event -> model.mark(condition));
      marks.put(condition, mark);
      flow.getChildren().add(mark);
    }
    return new VBox(Controls.text(texts, "conditions", "caption"), flow);
  }

  private void marked() {
    marks.forEach((condition, mark) -> mark.setSelected(model.conditions().contains(condition)));
    StringBuilder words = new StringBuilder();
    for (Condition condition : model.conditions()) {
      words
          .append(words.isEmpty() ? "" : "\n")
          .append(
              texts.get(
                  "consequence.is",
                  texts.get("condition." + condition.code()),
                  texts.get("consequence." + condition.consequence()),
                  texts.get("meaning." + condition.code())));
    }
    consequence.setText(words.toString());
  }

  private void title(String filter) {
    boolean none = filter.isEmpty();
    title.setText(none ? texts.get("notes.none") : texts.get("notes.of", InPrint.id(filter)));
    if (none) {
      said.setText("");
    }
    said.setManaged(!said.getText().isEmpty());
  }

  private void several() {
    several.getChildren().clear();
    for (Box.Note note : model.several()) {
      Button keep = Controls.button(texts, "keep.this", () -> screen.keep(note));
      keep.setText(texts.get("keep.note", source(note), brief(note)));
      keep.setMnemonicParsing(false);
      keep.setAccessibleText(keep.getText());
      several.getChildren().add(keep);
    }
    several.setManaged(!several.getChildren().isEmpty());
  }

  private String source(Box.Note note) {
    return note.source().isEmpty() ? texts.get("typed") : note.source();
  }

  private static String brief(Box.Note note) {
    String volume =
        note.cells().getOrDefault("volume_ml", note.cells().getOrDefault("portions_ml", ""));
    return (note.cells().getOrDefault("sample", "") + " " + volume).strip();
  }

  /** Says what stands against a bag, and offers the ways out. */
  void show(Box.Bag bag) {
    said.setText(bag.said().stream().map(texts::say).collect(Collectors.joining("\n")));
    said.setManaged(!bag.said().isEmpty());
    List<Node> ways = new ArrayList<>();
    ways.add(Controls.primary(texts, "keep", model::keep));
    String filter = bag.filter();
    switch (bag.standing()) {
      case NO_NOTES -> {
        ways.add(Controls.button(texts, "without", () -> screen.withoutNotes(filter)));
        ways.add(Controls.button(texts, "stock", () -> screen.backToStock(filter)));
      }
      case UNUSED -> ways.add(Controls.button(texts, "stock", () -> screen.backToStock(filter)));
      case NO_BAG, MISSING -> ways.add(Controls.button(texts, "here", () -> screen.isHere(filter)));
      default -> {}
    }
    ways.add(Controls.button(texts, "drop", () -> screen.drop(filter)));
    acts.getChildren().setAll(ways);
  }

  void focus() {
    Controls.focus(first);
  }
}
