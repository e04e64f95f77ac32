package org.siltbench.station.window.look;

import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.Property;
import javafx.beans.property.StringProperty;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import org.siltbench.station.window.desk.Texts;

/** Fields side by side, so many across, each bound to a value; Enter in a field does the act. */
public final class Sheet extends GridPane {

  private final Texts texts;
  private final int across;
  private final Runnable act;
  private int next;

  /**
   * A form.
   *
   * @param across columns
   * @param act what Enter does
   */
  public Sheet(Texts texts, int across, Runnable act) {
    this.texts = texts;
    this.across = across;
    this.act = act;
    getStyleClass().add("sheet");
  }

  /** A field for a text. */
  public Sheet text(String key, StringProperty value) {
    return text(key, value, 1);
  }

  /** A field for a text over several columns. */
  public Sheet text(String key, StringProperty value, int columns) {
    TextField field = new TextField();
    field.setPrefColumnCount(8 * columns);
    field.textProperty().bindBidirectional(value);
    field.setOnAction(event -> act.run());
    return add(Controls.field(texts, key, field), columns);
  }

  /** One of several things. */
  public <T> Sheet choice(
      String key, ObservableList<T> things, Function<T, String> name, Property<T> value) {
    return choice(key, things, name, value, 1);
  }

  /** One of several things with longer names, over several columns. */
  public <T> Sheet choice(
      String key,
      ObservableList<T> things,
      Function<T, String> name,
      Property<T> value,
      int columns) {
    ComboBox<T> box = Choices.of(things, name);
    box.valueProperty().bindBidirectional(value);
    box.setMaxWidth(Double.MAX_VALUE);
    if (columns > 1) {
      box.getStyleClass().add("long");
    }
    return add(Controls.captioned(texts, key, box), columns);
  }

  /** A box to tick. */
  public Sheet check(String key, BooleanProperty value) {
    CheckBox box = Controls.check(texts, key);
    box.selectedProperty().bindBidirectional(value);
    return add(box, 1);
  }

  /** Anything. */
  public Sheet add(Node node, int columns) {
    int column = next % across;
    if (column + columns > across) {
      next += across - column;
      column = 0;
    }
    add(node, column, next / across, columns, 1);
    next += columns;
    return this;
  }
}
