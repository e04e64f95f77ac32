package org.siltbench.station.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.bench.VerifyLab;

/** Duplicates are planned with the batch, and every paper that goes out says so in words. */
class PlannedDuplicatesTest {

  @TempDir Path folder;
  private CommandLab lab;

  @BeforeEach
  void practice() {
    lab = new CommandLab(folder.resolve("lab"));
    lab.ok("lab", "new", "--practice");
  }

  private CommandLab batch(int count, int duplicates) {
    return lab.ok(
        "batch",
        "new",
        "--name",
        "B",
        "--lot",
        "L",
        "--method",
        "epa-160.2",
        "--count",
        "" + count,
        "--duplicates",
        "" + duplicates,
        "--field-blanks",
        "1",
        "--json");
  }

  @SuppressWarnings("unchecked") // the shape of the document is a contract
  private List<Boolean> duplicates() throws Exception {
    List<Map<String, Object>> filters = (List<Map<String, Object>>) lab.document().get("filters");
    return filters.stream().map(filter -> filter.containsKey("duplicate")).toList();
  }

  @Test
  void aDuplicateStandsRightBehindTheSampleItRepeats() throws Exception {
    batch(9, 2);
    assertEquals(
        List.of(false, false, false, true, false, false, false, true, false), duplicates());
  }

  @Test
  void labelAndFieldSheetSayDuplicate() throws Exception {
    batch(5, 2);
    lab.ok("preweigh", "--batch", "B", "--balance", "practice?seed=1");
    Path labels = folder.resolve("labels.pdf");
    Path sheet = folder.resolve("sheet.pdf");
    lab.ok("labels", "--batch", "B", "--out", labels.toString());
    lab.ok("fieldsheet", "--batch", "B", "--out", sheet.toString());
    assertEquals(2, count(words(labels), "DUPLICATE"));
    assertEquals(2, count(words(sheet), "DUPLICATE"));
    assertEquals(1, count(words(sheet), "FIELD BLANK"));
    assertTrue(VerifyLab.of(lab.folder(), List.of()).ok());
  }

  @Test
  void moreDuplicatesThanSamplesAreRefused() {
    assertEquals(
        2,
        lab.run(
            "batch",
            "new",
            "--name",
            "B",
            "--lot",
            "L",
            "--method",
            "epa-160.2",
            "--count",
            "4",
            "--field-blanks",
            "1",
            "--duplicates",
            "2"));
    assertTrue(lab.err().contains("duplicates"), lab::err);
    assertFalse(lab.err().contains("batch created"), lab::err);
  }

  @Test
  void thePlanHandsItsDuplicatesToTheBatch() throws Exception {
    lab.ok("plan", "--every", "15m", "--for", "6h", "--json");
    Object duplicates = lab.document().get("duplicates");
    assertTrue(
        lab.document().get("batch_new").toString().contains(" --duplicates " + duplicates + " "),
        lab::out);
  }

  private static String words(Path pdf) throws Exception {
    try (var document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static int count(String text, String word) {
    return text.split(word, -1).length - 1;
  }
}
