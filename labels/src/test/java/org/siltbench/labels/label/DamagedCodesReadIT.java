package org.siltbench.labels.label;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.media.Form;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;

/**
 * Data Matrix after weather, at 300 dpi, read by libdmtx: at least 98 of 100 for each kind of
 * damage. A wrong text is never allowed, for the code's own error correction must not guess.
 */
class DamagedCodesReadIT {

  private static final double LEAST = 0.98;

  @BeforeAll
  static void readers() {
    assumeTrue(Outside.has("pdftoppm", "poppler-utils"), "pdftoppm is missing");
    assumeTrue(Outside.has("dmtxread", "dmtx-utils"), "dmtxread is missing");
  }

  @Test
  void damagedLabelsRead() throws Exception {
    judge(List.of("roll-30x15", "roll-50x25", "roll-70x50"), 2, 20260314);
  }

  @Test
  @Tag("long")
  void damagedLabelsOfEverySizeRead() throws Exception {
    List<String> rolls =
        MediaCatalog.builtIn().stream()
            .filter(m -> m.form() == Form.ROLL)
            .map(Media::name)
            .toList();
    judge(rolls, 30, 7);
  }

  private static void judge(List<String> stocks, int labels, long seed) throws Exception {
    Map<Weather, int[]> score = new EnumMap<>(Weather.class);
    SplittableRandom random = new SplittableRandom(seed);
    for (String stock : stocks) {
      LabelRun run =
          new LabelRun(
              AlderFork.labels(labels, false),
              MediaCatalog.find(stock),
              CodeKind.DATA_MATRIX,
              300,
              1,
              false);
      try (Drawn drawn = Drawn.of(run)) {
        for (int i = 0; i < labels; i++) {
          BufferedImage clean = Outside.raster(drawn.pdf(), i + 1, 300);
          score(clean, run.labels().get(i).code(), random, score);
        }
      }
    }
    score.forEach(
        (weather, s) -> {
          System.out.printf("%s: %d of %d read, %d wrong%n", weather, s[0], s[1], s[2]);
        });
    score.forEach(
        (weather, s) -> {
          assertTrue(s[0] >= LEAST * s[1], weather + ": only " + s[0] + " of " + s[1]);
          assertTrue(s[2] == 0, weather + ": " + s[2] + " read wrong");
        });
  }

  private static void score(
      BufferedImage clean, String code, SplittableRandom random, Map<Weather, int[]> score)
      throws Exception {
    for (Weather weather : Weather.values()) {
      String read = Outside.readPatiently(weather.on(clean, random));
      int[] s = score.computeIfAbsent(weather, w -> new int[3]);
      s[1]++;
      if (read.equals(code)) {
        s[0]++;
      } else if (!read.isEmpty()) {
        s[2]++;
        System.out.println(weather + " read " + read + " for " + code);
      }
    }
  }
}
