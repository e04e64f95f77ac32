package org.siltbench.labels.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.media.Form;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.MediaCatalog;

/** Every code on every stock, read back by programs that are not ours (libdmtx, ZBar). */
class PrintedCodesReadIT {

  @BeforeAll
  static void readers() {
    assumeTrue(Outside.has("pdftoppm", "poppler-utils"), "pdftoppm is missing");
    assumeTrue(Outside.has("dmtxread", "dmtx-utils"), "dmtxread is missing");
    assumeTrue(Outside.has("zbarimg", "zbar-tools"), "zbarimg is missing");
  }

  @ParameterizedTest
  @ValueSource(ints = {203, 300, 600})
  void dataMatrixReadsOnEveryRoll(int dpi) throws Exception {
    for (Media media : rolls()) {
      assertReads(media, CodeKind.DATA_MATRIX, dpi, 1, true);
      assertReads(media, CodeKind.DATA_MATRIX, dpi, 1, false);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {203, 300, 600})
  void qrReadsOnEveryRoll(int dpi) throws Exception {
    for (Media media : rolls()) {
      assertReads(media, CodeKind.QR, dpi, 1, false);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {203, 300, 600})
  void code128ReadsWhereItFits(int dpi) throws Exception {
    for (Media media : rolls()) {
      if (media.labelWidth() >= 60) {
        assertReads(media, CodeKind.CODE_128, dpi, 1, false);
      }
    }
  }

  @Test
  void code128IsRefusedWhereItsBarsWouldBeCut() {
    Media narrow = MediaCatalog.find("roll-30x15");
    LabelRun run = run(narrow, CodeKind.CODE_128, 203, 1, false);
    PaperProblem problem = assertThrows(PaperProblem.class, () -> Drawn.of(run));
    assertTrue(problem.next().contains("data-matrix"), problem.next());
  }

  @Test
  @Tag("long")
  void everyLabelOfABatchReadsOnEveryRoll() throws Exception {
    for (Media media : rolls()) {
      for (int dpi : new int[] {203, 300, 600}) {
        assertReads(media, CodeKind.DATA_MATRIX, dpi, 60, false);
      }
    }
  }

  @Test
  void everyLabelOfASheetReadsWhenCutOut() throws Exception {
    for (Media media : MediaCatalog.builtIn()) {
      if (media.form() == Form.SHEET) {
        assertSheetReads(media, 300);
      }
    }
  }

  private static List<Media> rolls() {
    return MediaCatalog.builtIn().stream().filter(m -> m.form() == Form.ROLL).toList();
  }

  private static LabelRun run(Media media, CodeKind kind, int dpi, int count, boolean practice) {
    return new LabelRun(AlderFork.labels(count, practice), media, kind, dpi, 1, false);
  }

  private static void assertReads(Media media, CodeKind kind, int dpi, int count, boolean practice)
      throws Exception {
    LabelRun run = run(media, kind, dpi, count, practice);
    try (Drawn drawn = Drawn.of(run)) {
      for (int i = 0; i < count; i++) {
        String read = Outside.read(kind, Outside.raster(drawn.pdf(), i + 1, dpi));
        assertEquals(
            run.labels().get(i).code(), read, kind + " on " + media.name() + " at " + dpi + " dpi");
      }
    }
  }

  private static void assertSheetReads(Media media, int dpi) throws Exception {
    LabelRun run = run(media, CodeKind.DATA_MATRIX, dpi, media.perPage(), false);
    List<String> wrong = new ArrayList<>();
    try (Drawn drawn = Drawn.of(run)) {
      var page = Outside.raster(drawn.pdf(), 1, dpi);
      for (int i = 0; i < media.perPage(); i += 7) {
        var label =
            page.getSubimage(
                dots(media.leftOf(i), dpi),
                dots(media.topOf(i), dpi),
                dots(media.labelWidth(), dpi) - 1,
                dots(media.labelHeight(), dpi) - 1);
        String read = Outside.read(CodeKind.DATA_MATRIX, label);
        if (!read.equals(run.labels().get(i).code())) {
          wrong.add(media.name() + " label " + (i + 1) + ": " + read);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static int dots(double mm, int dpi) {
    return (int) Math.round(mm * dpi / 25.4);
  }
}
