package org.siltbench.station.window.look;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.siltbench.station.window.desk.Texts;

/** A few choices side by side, one of them made; the parts of a screen, or the kinds of a thing. */
public final class Segments extends HBox {

  private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();

  /**
   * Choices; each word is added to the prefix for its text and its id.
   *
   * @param prefix ends with a dot: {@code "purpose."}
   */
  public Segments(Texts texts, String prefix, List<String> words, Consumer<String> chosen) {
    ToggleGroup group = new ToggleGroup();
    for (String word : words) {
      ToggleButton button = new ToggleButton(texts.get(prefix + word));
      button.setMnemonicParsing(true);
      button.setId((prefix + word).replace('.', '-'));
      button.setAccessibleText(button.getText().replace("_", ""));
      button.setMinWidth(Region.USE_PREF_SIZE);
      button.setToggleGroup(group);
      button.setOnAction(
          event -> {
            button.setSelected(true);
            chosen.accept(word);
          });
      buttons.put(word, button);
    }
    getChildren().setAll(buttons.values());
    getStyleClass().add("segments");
  }

  /** Shows which is chosen. */
  public void show(String word) {
    buttons.forEach((key, button) -> button.setSelected(key.equals(word)));
  }
}
