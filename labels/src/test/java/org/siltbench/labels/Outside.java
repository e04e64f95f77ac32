package org.siltbench.labels;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;

/** Programs that are not ours, to judge what we draw. */
public final class Outside {

  private Outside() {}

  /** What a program said. */
  public record Said(int status, String out) {}

  public static Said run(Object... command) throws IOException, InterruptedException {
    List<String> words = new ArrayList<>();
    for (Object word : command) {
      words.add(word.toString());
    }
    Path said = Files.createTempFile("said", ".txt");
    try {
      Process process =
          new ProcessBuilder(words).redirectErrorStream(true).redirectOutput(said.toFile()).start();
      if (!process.waitFor(120, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new IOException(words + " did not end within two minutes");
      }
      return new Said(process.exitValue(), Files.readString(said));
    } finally {
      Files.delete(said);
    }
  }

  /** True where a program is installed; says how to get it where not. */
  public static boolean has(String program, String debianPackage) {
    for (String folder : System.getenv("PATH").split(":")) {
      if (Files.isExecutable(Path.of(folder, program))) {
        return true;
      }
    }
    if (Files.isExecutable(Path.of("/usr/sbin", program))) {
      return true;
    }
    System.err.println(
        "NOT PROVEN: "
            + program
            + " is missing; install it with: apt-get install -y --no-install-recommends "
            + debianPackage);
    return false;
  }

  /** One page of a PDF as a printer of that resolution would lay its dots. */
  public static BufferedImage raster(Path pdf, int page, int dpi)
      throws IOException, InterruptedException {
    Path stem = Files.createTempFile("page", "");
    Path png = Path.of(stem + ".png");
    try {
      Said said = run("pdftoppm", "-r", dpi, "-gray", "-png", "-singlefile", "-f", page, pdf, stem);
      if (said.status() != 0) {
        throw new IOException("pdftoppm: " + said.out());
      }
      return ImageIO.read(png.toFile());
    } finally {
      Files.deleteIfExists(png);
      Files.delete(stem);
    }
  }
}
