package org.siltbench.station.work.paper;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.elsewhere.Elsewhere;

/** Folders of papers: {@code papers} of the lab for those that nobody named a file for. */
public final class PaperFolder {

  private PaperFolder() {}

  /**
   * Draws a paper into it, in place of an older one of the same name.
   *
   * @return the file
   */
  public static Path write(OpenLab lab, String name, PaperFile.Drawing drawing) {
    Path file = place(lab, name);
    PaperFile.write(file, drawing);
    return file;
  }

  /** Where a paper of this name goes; the folder is there. */
  public static Path place(OpenLab lab, String name) {
    Path folder = lab.folder().resolve("papers");
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new Problem.Outside(e, PaperSays.FOLDER_NOT_MADE, folder, Elsewhere.words(e));
    }
    return folder.resolve(name.replaceAll("[^\\p{L}\\p{N}._-]+", "-"));
  }

  /** Makes a folder that somebody named for papers, with all above it. */
  public static void make(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new Problem.Outside(e, PaperSays.OUT_NOT_MADE, folder, Elsewhere.words(e));
    }
  }
}
