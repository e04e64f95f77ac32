package org.siltbench.labels;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.MediaCatalog;

/**
 * Makes the pictures of the guide from the invented storm. They are written into the build folder;
 * with {@code -Dsiltbench.pictures=true} into docs/pictures.
 */
@Tag("long")
class PicturesTest {

  interface Write {
    void to(OutputStream out) throws IOException;
  }

  private static Path folder() throws IOException {
    Path root = Path.of(System.getProperty("siltbench.root", ".."));
    Path folder =
        Boolean.getBoolean("siltbench.pictures")
            ? root.resolve("docs/pictures")
            : root.resolve("labels/target/pictures");
    return Files.createDirectories(folder);
  }

  private static BufferedImage page(Write write, int page, int dpi) throws Exception {
    assumeTrue(Outside.has("pdftoppm", "poppler-utils"), "pdftoppm is missing");
    Path pdf = Files.createTempFile("paper", ".pdf");
    try {
      try (OutputStream out = Files.newOutputStream(pdf)) {
        write.to(out);
      }
      return Outside.raster(pdf, page, dpi);
    } finally {
      Files.delete(pdf);
    }
  }

  private static void keep(String name, BufferedImage picture) throws IOException {
    Path file = folder().resolve(name);
    ImageIO.write(picture, "png", file.toFile());
    assertTrue(Files.size(file) > 2000, name);
  }

  @Test
  void papers() throws Exception {
    Imprint imprint = AlderFork.imprint();
    keep(
        "paper-field-sheet.png",
        page(o -> Papers.fieldSheet(AlderFork.fieldSheet(), imprint, o), 1, 75));
    keep(
        "paper-field-steps.png",
        page(o -> Papers.fieldSheet(AlderFork.fieldSheet(), imprint, o), 3, 75));
    keep(
        "paper-log-sheet.png",
        page(o -> Papers.logSheet(AlderFork.logSheet(16), imprint, o), 1, 75));
    keep(
        "paper-log-seal.png",
        page(o -> Papers.logSheet(AlderFork.logSheet(16), imprint, o), 2, 75));
    keep(
        "paper-cycle-card.png",
        page(o -> Papers.cycleCard(AlderFork.cycleCard(), imprint, o), 1, 65));
    Write report = o -> Papers.testReport(AlderFork.testReport("Nguyễn Thị Hạnh"), imprint, o);
    keep("paper-report-1.png", page(report, 1, 65));
    keep("paper-report-2.png", page(report, 2, 65));
    keep(
        "paper-ruler.png",
        page(o -> Papers.rulerPage(MediaCatalog.find("sheet-a4-63.5x38"), 300, imprint, o), 1, 55));
  }

  @Test
  void labels() throws Exception {
    List<BufferedImage> all = new ArrayList<>();
    for (String stock : new String[] {"roll-30x15", "roll-50x25", "roll-50x30", "roll-70x50"}) {
      for (int label : new int[] {1, 5}) {
        all.add(page(o -> Papers.labels(run(stock, false), AlderFork.imprint(), o), label, 150));
      }
    }
    all.add(page(o -> Papers.labels(run("roll-50x30", true), AlderFork.imprint(), o), 1, 150));
    keep("labels.png", together(all, 2));
  }

  private static LabelRun run(String stock, boolean practice) {
    return new LabelRun(
        AlderFork.labels(6, practice),
        MediaCatalog.find(stock),
        CodeKind.DATA_MATRIX,
        300,
        1,
        false);
  }

  private static BufferedImage together(List<BufferedImage> pictures, int columns) {
    int width = pictures.stream().mapToInt(BufferedImage::getWidth).max().orElse(1) + 14;
    int rows = (pictures.size() + columns - 1) / columns;
    int[] heights = new int[rows];
    for (int i = 0; i < pictures.size(); i++) {
      int row = i / columns;
      heights[row] = Math.max(heights[row], pictures.get(i).getHeight() + 14);
    }
    int height = java.util.Arrays.stream(heights).sum();
    BufferedImage out =
        new BufferedImage(columns * width + 14, height + 14, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = out.createGraphics();
    g.setColor(new Color(205, 205, 205));
    g.fillRect(0, 0, out.getWidth(), out.getHeight());
    int y = 14;
    for (int i = 0; i < pictures.size(); i++) {
      g.drawImage(pictures.get(i), 14 + (i % columns) * width, y, null);
      y += i % columns == columns - 1 ? heights[i / columns] : 0;
    }
    g.dispose();
    return out;
  }
}
