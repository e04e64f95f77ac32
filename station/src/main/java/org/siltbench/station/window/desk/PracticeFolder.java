package org.siltbench.station.window.desk;

import java.nio.file.Path;

/** Where the practice lab of a lab is: in a folder of its own, beside it. */
public final class PracticeFolder {

  private PracticeFolder() {}

  /** The one beside this lab folder. */
  public static Path beside(Path labFolder) {
    Path here = labFolder.toAbsolutePath();
    return here.resolveSibling(here.getFileName() + "-practice");
  }
}
