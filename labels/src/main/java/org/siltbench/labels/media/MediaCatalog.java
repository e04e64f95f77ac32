package org.siltbench.labels.media;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.PapersSay;

/** The stock that comes built in, named by its millimetres, and stock from files. */
public final class MediaCatalog {

  private static final int MOST_BYTES = 64 * 1024;

  private static final List<Media> BUILT_IN =
      List.of(
          roll(30, 15),
          roll(40, 20),
          roll(50, 25),
          roll(50, 30),
          roll(60, 40),
          roll(70, 50),
          roll(100, 70),
          sheet("sheet-a4-70x37", 3, 8, 0, 0.5, 70, 37),
          sheet("sheet-a4-63.5x38", 3, 7, 7.25, 15.5, 63.5, 38, 66, 38),
          sheet("sheet-a4-99x57", 2, 5, 6, 6, 99, 57),
          sheet("sheet-a4-48.5x25", 4, 11, 8, 11, 48.5, 25));

  private MediaCatalog() {}

  /** Every built-in stock. */
  public static List<Media> builtIn() {
    return BUILT_IN;
  }

  /**
   * A built-in name or the path of a media file.
   *
   * @throws PaperProblem if it is neither, or the file does not parse
   */
  public static Media find(String nameOrPath) {
    for (Media media : BUILT_IN) {
      if (media.name().equals(nameOrPath)) {
        return media;
      }
    }
    try {
      Path file = Path.of(nameOrPath);
      if (Files.isRegularFile(file)) {
        return read(file);
      }
    } catch (InvalidPathException e) {
      throw unknown(nameOrPath, e);
    }
    throw unknown(nameOrPath, null);
  }

  private static PaperProblem unknown(String nameOrPath, @Nullable Throwable cause) {
    return new PaperProblem(
        PapersSay.NO_STOCK.with(nameOrPath),
        PapersSay.NOTHING.with(),
        PapersSay.BUILT_IN.with(
            BUILT_IN.stream().map(Media::name).collect(Collectors.joining(", "))),
        cause);
  }

  /** Reads a media file. */
  public static Media read(Path file) {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw new PaperProblem(PapersSay.STOCK_LARGE.with(file), PapersSay.FEW_LINES.with());
      }
      return MediaText.parse(Files.readString(file, StandardCharsets.UTF_8), file.toString());
    } catch (IOException e) {
      throw new PaperProblem(
          PapersSay.STOCK_UNREADABLE.with(file),
          PapersSay.NOTHING_PRINTED.with(),
          PapersSay.CHECK_STOCK_FILE.with(),
          e);
    }
  }

  private static Media roll(double width, double height) {
    String name = String.format(Locale.ROOT, "roll-%.0fx%.0f", width, height);
    return Media.roll(name, width, height);
  }

  private static Media sheet(
      String name, int columns, int rows, double left, double top, double width, double height) {
    return sheet(name, columns, rows, left, top, width, height, width, height);
  }

  private static Media sheet(
      String name,
      int columns,
      int rows,
      double left,
      double top,
      double width,
      double height,
      double across,
      double down) {
    return new Media(
        name,
        Form.SHEET,
        210,
        297,
        columns,
        rows,
        left,
        top,
        across,
        down,
        width,
        height,
        Math.min(2, height / 10),
        1.5,
        Calibration.NONE);
  }
}
