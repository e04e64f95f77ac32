package org.siltbench.station.window.shell;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.ScanTaker;

/** One screen as the shell sees it. Made when it is first shown, kept until the window closes. */
public interface Screen {

  /** Its view. */
  Node view();

  /** It came in front: look again at what may have changed. */
  default void shown() {}

  /** Takes scans while it is in front; empty where it has no use for any. */
  default Optional<ScanTaker> scans() {
    return Optional.empty();
  }

  /**
   * The one key or the foot pedal was pressed.
   *
   * @return false if there is nothing to decide here now
   */
  default boolean oneKey() {
    return false;
  }
}
