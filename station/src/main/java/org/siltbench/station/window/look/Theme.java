package org.siltbench.station.window.look;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.Scene;

/** The three looks: one sheet of sizes and shapes, and one of named colours for each. */
public enum Theme {
  LIGHT,
  DARK,
  CONTRAST;

  /** The theme of a word, light where it is none. */
  public static Theme of(String word) {
    for (Theme theme : values()) {
      if (theme.word().equals(word)) {
        return theme;
      }
    }
    return LIGHT;
  }

  /** The word kept in the settings. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Dresses a scene. */
  public void dress(Scene scene) {
    scene.getStylesheets().setAll(List.of(sheet("base.css"), sheet(word() + ".css")));
  }

  private static String sheet(String name) {
    return Objects.requireNonNull(Theme.class.getResource(name), name).toExternalForm();
  }
}
