package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Locale;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/** What a person is told when the disk says no. */
final class DiskTrouble {

  private DiskTrouble() {}

  static Problem.Outside opening(Path folder, IOException e) {
    if (e instanceof AccessDeniedException || text(e).contains("read-only")) {
      return new Problem.Outside(e, BenchSays.FOLDER_NOT_WRITABLE, folder, Elsewhere.words(e));
    }
    return new Problem.Outside(e, BenchSays.FOLDER_NOT_OPENED, folder, Elsewhere.words(e));
  }

  static Problem.Outside writing(boolean known, IOException e) {
    if (isFull(e)) {
      return new Problem.Outside(e, known ? BenchSays.DISK_FULL : BenchSays.DISK_FULL_UNSURE);
    }
    return new Problem.Outside(
        e, known ? BenchSays.DISK_FAILED : BenchSays.DISK_FAILED_UNSURE, Elsewhere.words(e));
  }

  static Problem.Outside nearlyFull(Path folder, long free) {
    return new Problem.Outside(null, BenchSays.NEARLY_FULL, folder, free >> 20);
  }

  static boolean isFull(IOException e) {
    String text = text(e);
    return text.contains("no space left")
        || text.contains("not enough space")
        || text.contains("quota exceeded");
  }

  private static String text(IOException e) {
    return String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
  }
}
