package org.siltbench.labels;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.siltbench.labels.code.CodeKind;

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

  /**
   * True where a program is installed; says how to get it where not, and fails where CI is true.
   */
  public static boolean has(String program, String debianPackage) {
    for (String folder : System.getenv("PATH").split(":")) {
      if (Files.isExecutable(Path.of(folder, program))) {
        return true;
      }
    }
    if (Files.isExecutable(Path.of("/usr/sbin", program))) {
      return true;
    }
    String said =
        "NOT PROVEN: "
            + program
            + " is missing; install it with: apt-get install -y --no-install-recommends "
            + debianPackage;
    if ("true".equals(System.getenv("CI"))) {
      throw new AssertionError(said);
    }
    System.err.println(said);
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

  /** What a reader of another house reads in a picture; empty where it reads nothing. */
  public static String read(CodeKind kind, BufferedImage picture)
      throws IOException, InterruptedException {
    return read(kind, picture, 30_000);
  }

  private static String read(CodeKind kind, BufferedImage picture, int milliseconds)
      throws IOException, InterruptedException {
    Path png = Files.createTempFile("code", ".png");
    try {
      ImageIO.write(picture, "png", png.toFile());
      if (kind == CodeKind.DATA_MATRIX) {
        return run("dmtxread", "-n", "-N1", "-m", milliseconds, png).out().strip();
      }
      String said = run("zbarimg", "-q", "--raw", png).out();
      return said.lines().filter(line -> !line.startsWith("Connection")).findFirst().orElse("");
    } finally {
      Files.delete(png);
    }
  }

  /** Data Matrix as a scanner tries it: as it is, then with ink grown by one dot and by two. */
  public static String readPatiently(BufferedImage picture)
      throws IOException, InterruptedException {
    String read = read(CodeKind.DATA_MATRIX, picture, 2_500);
    for (int grow = 1; read.isEmpty() && grow <= 2; grow++) {
      read = read(CodeKind.DATA_MATRIX, grown(picture, grow), 8_000);
    }
    return read;
  }

  private static BufferedImage grown(BufferedImage picture, int by) {
    BufferedImage out =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    for (int y = 0; y < out.getHeight(); y++) {
      for (int x = 0; x < out.getWidth(); x++) {
        out.getRaster().setSample(x, y, 0, darkest(picture, x, y, by));
      }
    }
    return out;
  }

  private static int darkest(BufferedImage picture, int x, int y, int reach) {
    int darkest = 255;
    for (int v = Math.max(0, y - reach); v <= Math.min(picture.getHeight() - 1, y + reach); v++) {
      for (int u = Math.max(0, x - reach); u <= Math.min(picture.getWidth() - 1, x + reach); u++) {
        darkest = Math.min(darkest, picture.getRaster().getSample(u, v, 0));
      }
    }
    return darkest;
  }
}
