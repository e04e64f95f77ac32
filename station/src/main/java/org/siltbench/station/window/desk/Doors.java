package org.siltbench.station.window.desk;

import java.nio.file.Path;

/** What only the window as a whole can do. */
public interface Doors {

  /** Listens to a balance from now on, in place of the one before. */
  void connect(String spec);

  /** Opens a window over a practice lab beside this one; the lab is made if there is none. */
  void openPractice(Path labFolder);

  /** Closes the window and opens it again over the same lab. */
  void again();
}
