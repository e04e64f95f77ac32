package org.siltbench.station.work.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.work.results.Dataset.Column;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** The spreadsheet, read as what it is: XML in a zip (ISO/IEC 29500-1). */
class SpreadsheetTest {

  private static final Dataset TABLE =
      new Dataset(
          "results",
          "Results",
          List.of(
              Column.text("filter", "filter ID"),
              Column.text("pre_g", "displayed digits, g"),
              Column.number("conc_mg_l", "concentration, mg/L"),
              Column.text("remarks", "words")),
          List.of(
              List.of("K3DF07019", "0.12870", "73.80", "=HYPERLINK(\"x\")"),
              List.of("K3DF07027", "0.12700", "-0.5", "+1"),
              List.of("K3DF07035", "0.12800", "", "")));

  @TempDir Path folder;
  private final Map<String, String> parts = new HashMap<>();

  private void write() throws Exception {
    Path file = folder.resolve("results.xlsx");
    Files.write(file, Spreadsheet.of(List.of(TABLE), Map.of("ledger_head", "3f9c1b7d")));
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry part : Collections.list(zip.entries())) {
        byte[] bytes = zip.getInputStream(part).readAllBytes();
        parts.put(part.getName(), new String(bytes, StandardCharsets.UTF_8));
      }
    }
  }

  private Document part(String name) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(parts.get(name).getBytes(StandardCharsets.UTF_8)));
  }

  private Element cell(String place) throws Exception {
    var cells = part("xl/worksheets/sheet1.xml").getElementsByTagName("c");
    for (int i = 0; i < cells.getLength(); i++) {
      Element cell = (Element) cells.item(i);
      if (cell.getAttribute("r").equals(place)) {
        return cell;
      }
    }
    throw new AssertionError("no cell " + place);
  }

  private String text(String place) throws Exception {
    Element cell = cell(place);
    if (!cell.getAttribute("t").equals("s")) {
      return cell.getTextContent();
    }
    var strings = part("xl/sharedStrings.xml").getElementsByTagName("si");
    return strings.item(Integer.parseInt(cell.getTextContent())).getTextContent();
  }

  @Test
  void massesStayTextDigitForDigitAndConcentrationsAreNumbers() throws Exception {
    write();
    assertEquals("0.12870", text("B2"));
    assertEquals("s", cell("B2").getAttribute("t"));
    assertEquals(73.8, Double.parseDouble(text("C2")));
    assertFalse(cell("C2").getAttribute("t").equals("s"));
    assertEquals(-0.5, Double.parseDouble(text("C3")));
    assertTrue(parts.get("xl/styles.xml").contains("\"0.00\""), parts.get("xl/styles.xml"));
  }

  @Test
  void noCellIsAFormula() throws Exception {
    write();
    assertEquals("=HYPERLINK(\"x\")", text("D2"));
    assertEquals("+1", text("D3"));
    parts.forEach((name, xml) -> assertFalse(xml.contains("<f>") || xml.contains("<f "), name));
  }

  @Test
  void aSheetSaysWhereItComesFrom() throws Exception {
    write();
    assertTrue(parts.get("xl/workbook.xml").contains("about"));
    assertTrue(parts.get("xl/sharedStrings.xml").contains("3f9c1b7d"));
    assertTrue(parts.get("xl/sharedStrings.xml").contains("mg/L"));
  }
}
