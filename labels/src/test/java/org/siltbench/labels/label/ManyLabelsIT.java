package org.siltbench.labels.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.Papers;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.media.MediaCatalog;

class ManyLabelsIT {

  @Test
  @Tag("long")
  void tenThousandLabelsFitAHeapOf512Megabytes(@TempDir Path folder) throws Exception {
    Path pdf = folder.resolve("many.pdf");
    String classPath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Outside.Said said =
        Outside.run(
            Path.of(System.getProperty("java.home"), "bin", "java"),
            "-Xmx512m",
            "-cp",
            classPath,
            Many.class.getName(),
            pdf);
    assertEquals(0, said.status(), said.out());
    assumeTrue(Outside.has("pdfinfo", "poppler-utils"), "pdfinfo is missing");
    assertTrue(Outside.run("pdfinfo", pdf).out().contains("Pages:           10000"));
  }

  /** A process of its own, so that the heap's limit is its own too. */
  public static final class Many {
    public static void main(String[] args) throws Exception {
      LabelRun run = LabelRun.of(AlderFork.labels(10_000, false), MediaCatalog.find("roll-50x25"));
      try (OutputStream out = Files.newOutputStream(Path.of(args[0]))) {
        Papers.labels(run, AlderFork.imprint(), out);
      }
    }
  }

  @Test
  void aUsedSheetIsGoneOnWithAtItsFirstFreeLabel() throws Exception {
    assumeTrue(Outside.has("pdftotext", "poppler-utils"), "pdftotext is missing");
    LabelRun run =
        new LabelRun(
            AlderFork.labels(24, false),
            MediaCatalog.find("sheet-a4-70x37"),
            CodeKind.DATA_MATRIX,
            300,
            23,
            false);
    try (Drawn drawn = Drawn.of(run)) {
      String[] pages = Outside.run("pdftotext", "-layout", drawn.pdf(), "-").out().split("\f");
      assertEquals(2, pages.length);
      assertEquals(2, count(pages[0]));
      assertEquals(22, count(pages[1]));
    }
  }

  @Test
  void aSlipFollowsItsLabelWithoutBoxes() throws Exception {
    assumeTrue(Outside.has("pdftotext", "poppler-utils"), "pdftotext is missing");
    LabelRun run =
        new LabelRun(
            AlderFork.labels(2, false),
            MediaCatalog.find("roll-50x25"),
            CodeKind.DATA_MATRIX,
            300,
            1,
            true);
    try (Drawn drawn = Drawn.of(run)) {
      String[] pages = Outside.run("pdftotext", drawn.pdf(), "-").out().split("\f");
      assertEquals(4, pages.length);
      assertTrue(pages[0].contains("volume") && !pages[0].contains("SLIP"), pages[0]);
      assertTrue(pages[1].contains("SLIP") && !pages[1].contains("volume"), pages[1]);
      assertEquals(
          run.labels().get(0).code(),
          Outside.read(CodeKind.DATA_MATRIX, Outside.raster(drawn.pdf(), 2, 300)));
    }
  }

  private static int count(String page) {
    return page.split("K3DF-07-", -1).length - 1;
  }
}
