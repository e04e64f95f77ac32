package org.siltbench.station.window.look;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;

/**
 * Controls made the same everywhere: their words from the bundle, a mnemonic where the text has an
 * underscore, a name for screen readers, a size for gloves.
 */
public final class Controls {

  private Controls() {}

  /** A button; the action runs on click, on its mnemonic, on Enter and Space. */
  public static Button button(Texts texts, String key, Runnable action) {
    Button button = new Button(texts.get(key));
    button.setMnemonicParsing(true);
    button.setId(key);
    button.setAccessibleText(texts.get(key).replace("_", ""));
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> action.run());
    return button;
  }

  /** The button of what is most likely wanted next. */
  public static Button primary(Texts texts, String key, Runnable action) {
    Button button = button(texts, key, action);
    button.getStyleClass().add("primary");
    return button;
  }

  /** A box to tick; its mnemonic leads to it, Space ticks it. */
  public static CheckBox check(Texts texts, String key) {
    CheckBox box = new CheckBox(texts.get(key));
    box.setMnemonicParsing(true);
    box.setId(key);
    box.setAccessibleText(texts.get(key).replace("_", ""));
    return box;
  }

  /** A label of a style class, its text set by the view. */
  public static Label label(String... classes) {
    Label label = new Label();
    label.getStyleClass().addAll(classes);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  /** A label with a text of the bundle. */
  public static Label text(Texts texts, String key, String... classes) {
    Label label = label(classes);
    label.setText(texts.get(key));
    return label;
  }

  /** Words in a table's cell; they are cut, never wrapped, and read whole by screen readers. */
  public static Label cell(String words) {
    Label label = new Label(words);
    label.getStyleClass().add("cell");
    return label;
  }

  /** Two lines in a table's cell, the second quieter. */
  public static VBox cell(String first, String second) {
    Label quiet = cell(second);
    quiet.getStyleClass().add("caption");
    VBox lines = new VBox(cell(first), quiet);
    lines.setAccessibleText(first + ", " + second);
    lines.getStyleClass().add("cell-lines");
    return lines;
  }

  /** A row of fields or buttons, set on one base line. */
  public static HBox line(Node... nodes) {
    HBox line = new HBox(nodes);
    line.getStyleClass().add("line");
    return line;
  }

  /** Buttons side by side; those that find no room stand on a second row. */
  public static FlowPane acts(Node... nodes) {
    FlowPane acts = new FlowPane(nodes);
    acts.getStyleClass().add("acts");
    return acts;
  }

  /** An input with its caption above; the caption's mnemonic leads to it. */
  public static VBox field(Texts texts, String key, TextField input) {
    return captioned(texts, key, input);
  }

  /** Any input with its caption above. */
  public static VBox captioned(Texts texts, String key, Node input) {
    Label caption = text(texts, key, "caption");
    caption.setMnemonicParsing(true);
    caption.setLabelFor(input);
    input.setId(key);
    input.setAccessibleText(texts.get(key).replace("_", ""));
    VBox box = new VBox(caption, input);
    box.getStyleClass().add("field");
    return box;
  }

  /** A word with its shape, in a tone: {@code chip(GOOD, TICK, "constant")}. */
  public static HBox chip(Tone tone, Shape shape, String word) {
    Label label = whole(new Label(word));
    HBox chip = new HBox(shape.node(), label);
    chip.getStyleClass().addAll("chip", tone.style());
    chip.setAccessibleText(word);
    chip.setMinWidth(Region.USE_PREF_SIZE);
    chip.setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    return chip;
  }

  /** Puts the focus on a node, once the key that led here is done with. */
  public static void focus(Node node) {
    Platform.runLater(node::requestFocus);
  }

  /** Gives a control a name for screen readers. */
  public static <T extends Node> T named(T node, String name) {
    node.setAccessibleText(name);
    return node;
  }

  /** Shows a part, or takes it and its place away: what is only unmanaged would still be drawn. */
  public static void shown(Node part, boolean is) {
    part.setVisible(is);
    part.setManaged(is);
  }

  /** What may be taller than its place: it scrolls, and takes the height there is. */
  public static ScrollPane scroll(Node content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }

  /** Room that takes what is left in a row. */
  public static Region spring() {
    Region region = new Region();
    HBox.setHgrow(region, Priority.ALWAYS);
    return region;
  }

  /** Never cuts the text of a label off. */
  public static <T extends Labeled> T whole(T labeled) {
    labeled.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    return labeled;
  }
}
