package org.siltbench.station.window.shell;

import java.util.function.Function;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import org.siltbench.station.window.desk.Desk;

/**
 * A screen the window has. Its name in the rail is the shell's text {@code screen.ID}.
 *
 * @param id a short stable word
 * @param key the key that brings it in front
 * @param make makes it for a desk
 */
public record ScreenEntry(String id, KeyCombination key, Function<Desk, Screen> make) {

  /** Without a key and a place in the rail: other screens lead to it. */
  public static ScreenEntry hidden(String id, Function<Desk, Screen> make) {
    return new ScreenEntry(id, KeyCombination.NO_MATCH, make);
  }

  /** True if it stands in the rail. */
  public boolean inRail() {
    return !key.equals(KeyCombination.NO_MATCH);
  }

  /** On a function key. */
  public static ScreenEntry on(KeyCode key, String id, Function<Desk, Screen> make) {
    return new ScreenEntry(id, new KeyCodeCombination(key), make);
  }
}
