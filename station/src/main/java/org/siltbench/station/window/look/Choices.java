package org.siltbench.station.window.look;

import java.util.function.Function;
import javafx.collections.ObservableList;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;

/** Lists to choose one from, each thing shown by its name. */
public final class Choices {

  private Choices() {}

  /** A choice among these; the list may change later. */
  public static <T> ComboBox<T> of(ObservableList<T> things, Function<T, String> name) {
    ComboBox<T> box = new ComboBox<>(things);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T thing) {
            return thing == null ? "" : name.apply(thing);
          }

          @Override
          public T fromString(String text) {
            throw new UnsupportedOperationException("a thing is chosen, not typed");
          }
        });
    return box;
  }
}
