package org.siltbench.labels.draw;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.Papers;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.MediaCatalog;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Papers judged by checkers that are not ours: veraPDF, qpdf, poppler. */
class ArchivalTest {

  /** A paper that writes itself. */
  interface Write {
    void to(ByteArrayOutputStream out) throws IOException;
  }

  @BeforeAll
  static void checkers() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static Stream<Named<Write>> archival() {
    return Stream.of(
        paper("log", out -> Papers.logSheet(AlderFork.logSheet(34), AlderFork.imprint(), out)),
        paper(
            "practice log",
            out -> Papers.logSheet(AlderFork.logSheet(3), AlderFork.imprint(true), out)),
        paper(
            "report",
            out ->
                Papers.testReport(
                    AlderFork.testReport("Nguyễn Thị Hạnh"), AlderFork.imprint(), out)),
        paper(
            "practice report",
            out -> Papers.testReport(AlderFork.testReport(""), AlderFork.imprint(true), out)));
  }

  static Stream<Named<Write>> every() {
    return Stream.concat(
        archival(),
        Stream.of(
            paper(
                "field",
                out -> Papers.fieldSheet(AlderFork.fieldSheet(), AlderFork.imprint(), out)),
            paper(
                "cycle", out -> Papers.cycleCard(AlderFork.cycleCard(), AlderFork.imprint(), out)),
            paper(
                "ruler",
                out ->
                    Papers.rulerPage(
                        MediaCatalog.find("roll-50x25"), 300, AlderFork.imprint(), out)),
            paper(
                "labels",
                out ->
                    Papers.labels(
                        LabelRun.of(
                            AlderFork.labels(30, false), MediaCatalog.find("sheet-a4-70x37")),
                        AlderFork.imprint(),
                        out))));
  }

  private static Named<Write> paper(String name, Write write) {
    return Named.of(name, write);
  }

  private static byte[] bytes(Write write) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write.to(out);
    return out.toByteArray();
  }

  @ParameterizedTest
  @MethodSource("archival")
  void archivalPapersPassTheArchivalCheck(Write write) throws Exception {
    assertEquals(List.of(), failures(bytes(write)));
  }

  /** Proof that the checker above can fail. */
  @Test
  void aPaperThatIsNotArchivalFailsTheArchivalCheck() throws Exception {
    byte[] sheet =
        bytes(out -> Papers.fieldSheet(AlderFork.fieldSheet(), AlderFork.imprint(), out));
    assertFalse(failures(sheet).isEmpty());
  }

  private static List<String> failures(byte[] pdf) throws Exception {
    PDFAFlavour flavour = PDFAFlavour.PDFA_2_B;
    try (PDFAParser parser =
            Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      ValidationResult result = validator.validate(parser);
      List<String> failed =
          result.getTestAssertions().stream()
              .filter(a -> a.getStatus() == TestAssertion.Status.FAILED)
              .map(a -> a.getRuleId() + " " + a.getMessage())
              .distinct()
              .toList();
      assertEquals(failed.isEmpty(), result.isCompliant());
      return failed;
    }
  }

  @ParameterizedTest
  @MethodSource("every")
  void sameInputGivesSameBytes(Write write) throws Exception {
    assertArrayEquals(bytes(write), bytes(write));
  }

  @ParameterizedTest
  @MethodSource("every")
  void qpdfFindsNothingWrong(Write write) throws Exception {
    assumeTrue(Outside.has("qpdf", "qpdf"), "qpdf is missing");
    Path pdf = Files.write(Files.createTempFile("paper", ".pdf"), bytes(write));
    try {
      Outside.Said said = Outside.run("qpdf", "--check", pdf);
      assertEquals(0, said.status(), said.out());
    } finally {
      Files.delete(pdf);
    }
  }

  @ParameterizedTest
  @MethodSource("every")
  void everyFontIsEmbeddedAsASubset(Write write) throws Exception {
    assumeTrue(Outside.has("pdffonts", "poppler-utils"), "pdffonts is missing");
    Path pdf = Files.write(Files.createTempFile("paper", ".pdf"), bytes(write));
    try {
      List<String> fonts = Outside.run("pdffonts", pdf).out().lines().skip(2).toList();
      assertTrue(!fonts.isEmpty());
      for (String font : fonts) {
        assertTrue(
            font.matches("[A-Z]{6}\\+NotoSans.*CID TrueType\\s+Identity-H\\s+yes yes yes.*"), font);
      }
    } finally {
      Files.delete(pdf);
    }
  }
}
