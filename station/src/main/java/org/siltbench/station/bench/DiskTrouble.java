package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Locale;
import org.siltbench.station.Problem;

/** What a person is told when the disk says no. */
final class DiskTrouble {

  private DiskTrouble() {}

  static Problem.Outside opening(Path folder, IOException e) {
    if (e instanceof AccessDeniedException || text(e).contains("read-only")) {
      return new Problem.Outside(
          "The lab folder " + folder + " cannot be written: " + e.getMessage() + ".",
          "Nothing was changed.",
          "Ask for the right to write there, or name another folder with --lab.",
          e);
    }
    return new Problem.Outside(
        "The lab folder " + folder + " cannot be opened: " + e.getMessage() + ".",
        "Nothing was changed.",
        "Check the disk, then try again.",
        e);
  }

  static Problem.Outside writing(boolean known, IOException e) {
    String what =
        isFull(e) ? "The disk is full." : "The disk failed while writing: " + e.getMessage() + ".";
    String safe =
        known
            ? "This was not recorded. Everything recorded before is safe."
            : "It is not certain whether this was recorded. Everything before it is safe.";
    String next =
        isFull(e)
            ? "Make room on the disk, then do it again."
            : "Check the disk, make a backup, then do it again.";
    return new Problem.Outside(what, safe, next, e);
  }

  static Problem.Outside nearlyFull(Path folder, long free) {
    return new Problem.Outside(
        "The disk that holds %s is nearly full: %d MiB are left.".formatted(folder, free >> 20),
        "This was not recorded. Everything recorded before is safe.",
        "Make room on the disk, then do it again.",
        null);
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
