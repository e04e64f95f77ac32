package org.siltbench.station.work.paper;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.siltbench.labels.PaperProblem;
import org.siltbench.station.Problem;
import org.siltbench.station.elsewhere.Elsewhere;

/** Writes a paper to a file: whole, or not at all. */
public final class PaperFile {

  private PaperFile() {}

  /** What draws the paper. */
  public interface Drawing {
    /** Draws it. */
    void to(OutputStream out) throws IOException;
  }

  /**
   * Writes the file beside its place and moves it there when it is whole.
   *
   * @throws Problem.Outside if the disk fails
   */
  public static void write(Path file, Drawing drawing) {
    Path folder = file.toAbsolutePath().getParent();
    try {
      Path part = Files.createTempFile(folder, ".siltbench-", ".part");
      try {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
          drawing.to(out);
        }
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (PaperProblem e) {
      throw problem(e);
    } catch (IOException e) {
      throw new Problem.Outside(e, PaperSays.NOT_WRITTEN, file, Elsewhere.words(e));
    }
  }

  /** A paper's problem as the person is told it. */
  public static Problem problem(PaperProblem e) {
    return new Problem.WrongUse(
        PaperSays.NOT_DRAWN, Elsewhere.words(e), Elsewhere.words(e.wayOut()));
  }
}
