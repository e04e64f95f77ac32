package org.siltbench.station.window.look;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import javafx.beans.property.ObjectProperty;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;

/** The side of a screen that has several parts, one of them shown. */
public final class Parts<E extends Enum<E>> extends VBox {

  /**
   * Follows the part wanted, and sets it; its texts are its name in small letters after the prefix.
   */
  public Parts(
      Texts texts, String prefix, Class<E> kind, Map<E, Node> panes, ObjectProperty<E> wanted) {
    StackPane part = new StackPane();
    Segments choice =
        new Segments(
            texts,
            prefix,
            Arrays.stream(kind.getEnumConstants()).map(Parts::word).toList(),
            word -> wanted.set(Enum.valueOf(kind, word.toUpperCase(Locale.ROOT))));
    getStyleClass().add("side");
    getChildren().addAll(choice, part);
    VBox.setVgrow(part, Priority.ALWAYS);
    HBox.setHgrow(this, Priority.ALWAYS);
    wanted.subscribe(
        now -> {
          choice.show(word(now));
          Node pane = panes.get(now);
          if (pane != null) {
            part.getChildren().setAll(pane);
          }
        });
  }

  private static String word(Enum<?> part) {
    return part.name().toLowerCase(Locale.ROOT);
  }
}
