package org.siltbench.labels.media;

import java.nio.file.Path;
import java.util.List;

/** The stock that comes built in, named by its millimetres, and stock from files. */
public final class MediaCatalog {

  private MediaCatalog() {}

  /** Every built-in stock. */
  public static List<Media> builtIn() {
    throw new UnsupportedOperationException();
  }

  /**
   * A built-in name or the path of a media file.
   *
   * @throws org.siltbench.labels.PaperProblem if it is neither, or the file does not parse
   */
  public static Media find(String nameOrPath) {
    throw new UnsupportedOperationException(nameOrPath);
  }

  /** Reads a media file. */
  public static Media read(Path file) {
    return MediaText.parse(file.toString(), "");
  }
}
