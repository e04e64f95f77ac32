package org.siltbench.labels.media;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.siltbench.labels.PaperProblem;

class MediaTextTest {

  private static final String SHEET =
      """
      # the box in the second drawer
      name: drawer 2
      form: sheet
      page: 210 297
      grid: 3 8
      first: 0 0.5
      pitch: 70 37
      label: 70 37
      corner: 2
      safe: 1.5
      move: 0.4 -0.2
      scale: 1.002 0.998
      """;

  @Test
  void aSheetIsReadWithItsCalibration() {
    Media media = MediaText.parse(SHEET, "drawer.media");
    assertEquals("drawer 2", media.name());
    assertEquals(24, media.perPage());
    assertEquals(70, media.leftOf(4));
    assertEquals(37.5, media.topOf(4));
    assertEquals(new Calibration(0.4, -0.2, 1.002, 0.998), media.calibration());
  }

  @Test
  void aRollNeedsOnlyItsFormAndItsLabel() {
    Media media = MediaText.parse("form: roll\nlabel: 50 25\n", "small.media");
    assertEquals(50, media.pageWidth());
    assertEquals(25, media.pageHeight());
    assertEquals(1, media.perPage());
  }

  @Test
  void builtInStockWritesAndReadsBack() {
    for (Media media : MediaCatalog.builtIn()) {
      assertEquals(media, MediaText.parse(MediaText.write(media), "x"));
    }
  }

  @Property(tries = 300)
  void anyStockWritesAndReadsBack(
      @ForAll @IntRange(min = 30_000, max = 100_000) int width,
      @ForAll @IntRange(min = 15_000, max = 70_000) int height,
      @ForAll @IntRange(min = 1, max = 4) int columns,
      @ForAll @IntRange(min = -3000, max = 3000) int move) {
    double w = width / 1000.0;
    double h = height / 1000.0;
    Media media =
        new Media(
            "any",
            Form.SHEET,
            (columns * width + 10_000) / 1000.0,
            (2 * height + 10_000) / 1000.0,
            columns,
            2,
            5,
            5,
            w,
            h,
            w,
            h,
            1,
            1,
            new Calibration(move / 1000.0, -move / 1000.0, 1.001, 0.999));
    assertEquals(media, MediaText.parse(MediaText.write(media), "any"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "form roll                        | line 1 | no colon",
        "form: roll;color: red            | line 2 | Keys are",
        "form: roll;label: 50             | line 2 | needs 2 numbers",
        "form: roll;label: 50,5 25        | line 2 | 50,5",
        "form: roll;label: 50 25;label: 1 1 | line 3 | second time",
        "form: strip                      | line 1 | roll or sheet",
        "label: 50 25                     | no line | form",
        "form: sheet;label: 50 25         | no line | page",
        "form: roll;label: 20 10          | under 30 x 15 | Measure",
        "form: sheet;label: 60 40;page: 210 297;grid: 4 2;first: 0 0 | wider than its page | Measure",
        "form: sheet;label: 60 40;page: 210 297;grid: 3 2;first: 0 0;pitch: 50 40 | overlap | Measure",
        "form: sheet;label: 60 40;page: 210 297;grid: 2.5 2;first: 0 0 | whole numbers | grid",
        "form: roll;label: 50 25;scale: 2 1 | scale across is 2.0 | ruler",
      })
  void aWrongFileNamesLineAndRemedy(String text, String where, String remedy) {
    PaperProblem problem =
        assertThrows(PaperProblem.class, () -> MediaText.parse(text.replace(';', '\n'), "f.media"));
    assertTrue(problem.getMessage().contains(where), problem.getMessage());
    assertTrue(problem.getMessage().contains(remedy), problem.getMessage());
  }

  @Test
  void aNameOrAPathFindsStock(@TempDir Path folder) throws Exception {
    Path file = Files.writeString(folder.resolve("drawer.media"), SHEET);
    assertEquals("drawer 2", MediaCatalog.find(file.toString()).name());
    assertEquals(50, MediaCatalog.find("roll-50x25").labelWidth());
    PaperProblem problem = assertThrows(PaperProblem.class, () -> MediaCatalog.find("roll-1x1"));
    assertTrue(problem.next().contains("roll-50x25"), problem.next());
  }

  @Test
  void aFileThatIsNotTextIsRefused(@TempDir Path folder) throws Exception {
    Path file = Files.write(folder.resolve("x.media"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
    assertThrows(PaperProblem.class, () -> MediaCatalog.read(file));
  }
}
