package org.siltbench.station.window.look;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import org.siltbench.station.window.desk.Texts;

/** Text fields with their captions, side by side as the width allows; read and filled by key. */
public final class Form extends FlowPane {

  private final Texts texts;
  private final Map<String, TextField> fields = new LinkedHashMap<>();

  /** A form without fields. */
  public Form(Texts texts) {
    this.texts = texts;
    getStyleClass().add("flow");
  }

  /** Adds a field; its key is the text of its caption and its id. */
  public Form field(String key, int columns) {
    TextField input = new TextField();
    input.setPrefColumnCount(columns);
    fields.put(key, input);
    getChildren().add(Controls.field(texts, key, input));
    return this;
  }

  /** What stands in a field. */
  public String get(String key) {
    return input(key).getText();
  }

  /** Fills a field; null empties it. */
  public void set(String key, @org.jspecify.annotations.Nullable Object value) {
    input(key).setText(value == null ? "" : value.toString());
  }

  /** Empties every field. */
  public void clear() {
    fields.values().forEach(TextField::clear);
  }

  /** Puts the focus into a field. */
  public void focus(String key) {
    input(key).requestFocus();
  }

  private TextField input(String key) {
    TextField input = fields.get(key);
    if (input == null) {
      throw new IllegalArgumentException("no field " + key);
    }
    return input;
  }
}
