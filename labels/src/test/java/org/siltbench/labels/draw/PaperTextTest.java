package org.siltbench.labels.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.Papers;

/** What a person can find and copy from a paper, read back by poppler. */
class PaperTextTest {

  interface Write {
    void to(OutputStream out) throws IOException;
  }

  @BeforeAll
  static void readers() {
    assumeTrue(Outside.has("pdftotext", "poppler-utils"), "pdftotext is missing");
  }

  private static String text(Write write) throws Exception {
    Path pdf = Files.createTempFile("paper", ".pdf");
    try {
      try (OutputStream out = Files.newOutputStream(pdf)) {
        write.to(out);
      }
      return Outside.run("pdftotext", "-layout", pdf, "-").out();
    } finally {
      Files.delete(pdf);
    }
  }

  @Test
  void theLogShowsBothTheStruckValueAndTheOneThatHolds() throws Exception {
    String log = text(out -> Papers.logSheet(AlderFork.logSheet(34), AlderFork.imprint(), out));
    assertTrue(log.contains("0.12874 g"), log);
    assertTrue(log.contains("0.12847 g"), log);
    assertTrue(log.contains("K3DF-07-07V"), log);
    assertTrue(log.contains("Two digits were exchanged"), log);
  }

  @Test
  void theLogNumbersItsPagesAndCarriesTheHeadHashOnEach() throws Exception {
    String log = text(out -> Papers.logSheet(AlderFork.logSheet(80), AlderFork.imprint(), out));
    String[] pages = log.split("\f");
    for (int i = 0; i < pages.length; i++) {
      assertTrue(pages[i].contains("page " + (i + 1) + " of " + pages.length), pages[i]);
      assertTrue(pages[i].contains(AlderFork.HEAD), pages[i]);
    }
    assertTrue(pages.length >= 3);
  }

  @Test
  void namesInLatinGreekAndCyrillicComeBackWhole() throws Exception {
    String log = text(out -> Papers.logSheet(AlderFork.logSheet(34), AlderFork.imprint(), out));
    for (String name : new String[] {"Ødegård", "Щербакова", "Σοφία Ἀλεξίου"}) {
      assertTrue(log.contains(name), name);
    }
  }

  @Test
  void theReportSaysWhatItReplacesAndMarksADraft() throws Exception {
    String report =
        text(out -> Papers.testReport(AlderFork.testReport(""), AlderFork.imprint(), out));
    assertTrue(report.contains("replaces no. AF-2026-011"), report);
    assertTrue(report.contains("draft until signed"), report);
    assertTrue(report.contains("OUTSIDE"), report);
  }

  @Test
  void practicePapersSaySoOnEveryPage() throws Exception {
    String report =
        text(out -> Papers.testReport(AlderFork.testReport(""), AlderFork.imprint(true), out));
    for (String page : report.split("\f")) {
      assertTrue(page.contains("PRACTICE"), page);
    }
  }

  @Test
  void noLetterOfTheThreeScriptsIsMissing() throws Exception {
    try (Paper paper = new Paper(new Title("t", "s", false, false), AlderFork.imprint())) {
      for (boolean bold : new boolean[] {false, true}) {
        StringBuilder missing = new StringBuilder();
        for (int c = 0xA0; c < 0x2100; c++) {
          if (isOurs(c) && paper.face(bold).settable(Character.toString(c)).equals("?")) {
            missing.appendCodePoint(c);
          }
        }
        assertEquals("", missing.toString());
      }
    }
  }

  private static boolean isOurs(int c) {
    Character.UnicodeScript script = Character.UnicodeScript.of(c);
    return Character.isLetter(c)
        && (script == Character.UnicodeScript.LATIN
            || script == Character.UnicodeScript.GREEK
            || script == Character.UnicodeScript.CYRILLIC);
  }

  @Test
  void aMinusSignIsNeverLost() throws Exception {
    try (Paper paper = new Paper(new Title("t", "s", false, false), AlderFork.imprint())) {
      assertEquals("–0.1 mg", paper.face(false).settable("−0.1 mg"));
      assertEquals("<= 2 °C ± 1", paper.face(false).settable("≤ 2 °C ± 1"));
      assertEquals("é", paper.face(false).settable("e\u0301"));
    }
  }
}
