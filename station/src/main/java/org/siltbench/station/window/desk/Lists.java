package org.siltbench.station.window.desk;

import java.util.List;
import javafx.collections.ObservableList;

/** Lists that views follow. */
public final class Lists {

  private Lists() {}

  /** Lets a list become this one; where nothing differs it stays untouched, and a choice in it. */
  public static <T> void follow(ObservableList<T> shown, List<T> now) {
    if (!now.equals(shown)) {
      shown.setAll(now);
    }
  }
}
