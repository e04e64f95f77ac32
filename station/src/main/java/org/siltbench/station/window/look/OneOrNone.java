package org.siltbench.station.window.look;

import java.util.List;
import javafx.scene.control.ChoiceBox;

/** One name to choose, or none of them: the first line says so in words. */
public final class OneOrNone extends ChoiceBox<String> {

  /** Offers these. */
  public void offer(String none, List<String> names) {
    getItems().setAll(none);
    getItems().addAll(names);
  }

  /** The name chosen, or empty for none. */
  public String chosen() {
    return getSelectionModel().getSelectedIndex() <= 0 ? "" : getValue();
  }
}
