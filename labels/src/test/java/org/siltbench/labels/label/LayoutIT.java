package org.siltbench.labels.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.media.Media;

/** Labels of any size lay themselves out: looked at as dots and as words, by poppler. */
class LayoutIT {

  private static final Pattern WORD =
      Pattern.compile(
          "<word xMin=\"(.*?)\" yMin=\"(.*?)\" xMax=\"(.*?)\" yMax=\"(.*?)\">(.*?)</word>");
  private static final double PX_PER_MM = 300 / 25.4;

  @BeforeAll
  static void readers() {
    assumeTrue(Outside.has("pdftoppm", "poppler-utils"), "pdftoppm is missing");
    assumeTrue(Outside.has("dmtxread", "dmtx-utils"), "dmtxread is missing");
  }

  @Test
  void nothingIsCutOnLabelsOfManySizes() throws Exception {
    tryOut(12, 5);
  }

  @Test
  @Tag("long")
  void nothingIsCutOnLabelsOfAnySize() throws Exception {
    tryOut(300, 6);
  }

  private static void tryOut(int sizes, long seed) throws Exception {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < sizes; i++) {
      double width = 30 + random.nextInt(71);
      double height = 15 + random.nextInt(56);
      CodeKind kind = random.nextInt(3) == 0 ? CodeKind.QR : CodeKind.DATA_MATRIX;
      BagLabel label = label(random);
      Media media = Media.roll("roll " + width + " x " + height, width, height);
      judge(new LabelRun(List.of(label), media, kind, 300, 1, random.nextInt(4) == 0));
    }
  }

  private static BagLabel label(SplittableRandom random) {
    BagLabel some = AlderFork.labels(12, random.nextBoolean()).get(random.nextInt(12));
    String batch =
        "A batch with a name that goes on and on, March".substring(0, 5 + random.nextInt(40));
    return new BagLabel(
        some.code(),
        some.id(),
        some.mass(),
        1 + random.nextInt(27),
        some.role(),
        random.nextBoolean(),
        batch,
        some.practice());
  }

  private static void judge(LabelRun run) throws Exception {
    String what = run.media().name() + " " + run.kind() + " " + run.labels().get(0);
    try (Drawn drawn = Drawn.of(run)) {
      BufferedImage picture = Outside.raster(drawn.pdf(), 1, 300);
      assertEquals(Math.ceil(run.media().pageWidth() * PX_PER_MM), picture.getWidth(), 1, what);
      assertMarginIsEmpty(picture, run.media().safe(), what);
      assertEquals(run.labels().get(0).code(), Outside.read(run.kind(), picture), what);
      assertWordsStandApart(Outside.run("pdftotext", "-bbox", drawn.pdf(), "-").out(), run, what);
    }
  }

  /** The safe margin, less a dot for rounding, carries no ink: so nothing runs over the edge. */
  private static void assertMarginIsEmpty(BufferedImage picture, double safe, String what) {
    int margin = (int) (safe * PX_PER_MM) - 2;
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        boolean inside =
            x >= margin
                && y >= margin
                && x < picture.getWidth() - margin
                && y < picture.getHeight() - margin;
        if (!inside && picture.getRaster().getSample(x, y, 0) < 128) {
          throw new AssertionError("ink in the margin at " + x + ", " + y + ": " + what);
        }
      }
    }
  }

  private static void assertWordsStandApart(String bbox, LabelRun run, String what) {
    List<double[]> boxes = new ArrayList<>();
    Matcher word = WORD.matcher(bbox.substring(0, bbox.indexOf("</page>")));
    while (word.find()) {
      double[] box = new double[4];
      for (int i = 0; i < 4; i++) {
        box[i] = Double.parseDouble(word.group(i + 1)) * 25.4 / 72;
      }
      assertTrue(box[0] >= 0 && box[2] <= run.media().pageWidth() + 0.01, what + word.group());
      boxes.add(box);
    }
    assertTrue(boxes.size() >= 4, bbox);
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertTrue(!overlap(boxes.get(i), boxes.get(j)), what + " words overlap: " + bbox);
      }
    }
  }

  /** Line boxes include the room for accents: a quarter of the height may touch. */
  private static boolean overlap(double[] a, double[] b) {
    double across = Math.min(a[2], b[2]) - Math.max(a[0], b[0]);
    double down = Math.min(a[3], b[3]) - Math.max(a[1], b[1]);
    return across > 0.1 && down > 0.3 * Math.min(a[3] - a[1], b[3] - b[1]);
  }
}
