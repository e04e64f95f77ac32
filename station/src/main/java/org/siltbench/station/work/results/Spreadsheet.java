package org.siltbench.station.work.results;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The tables as one spreadsheet, a sheet each, and a sheet that says where they come from. Numbers
 * are numbers with the decimals they are written with; masses stay text, digit for digit. No cell
 * is a formula.
 */
final class Spreadsheet {

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final int MOST_DIGITS = 15;
  private static final double WIDEST = 60;

  private Spreadsheet() {}

  static byte[] of(List<Dataset> tables, Map<String, Object> provenance) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(out, "Siltbench", "1.0")) {
      for (Dataset table : tables) {
        sheet(book.newWorksheet(table.name()), table);
      }
      about(book.newWorksheet("about"), tables, provenance);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail", e);
    }
    return out.toByteArray();
  }

  private static void sheet(Worksheet sheet, Dataset table) {
    for (int column = 0; column < table.columns().size(); column++) {
      Dataset.Column head = table.columns().get(column);
      sheet.value(0, column, head.name());
      sheet.style(0, column).bold().set();
      sheet.comment(0, column, head.meaning());
      boolean number = head.type().equals("number");
      double widest = head.name().length();
      for (int row = 0; row < table.rows().size(); row++) {
        String cell = table.rows().get(row).get(column);
        cell(sheet, row + 1, column, cell, number);
        widest = Math.max(widest, cell.length());
      }
      sheet.width(column, Math.min(WIDEST, widest + 2));
    }
    sheet.freezePane(1, 1);
  }

  private static void cell(Worksheet sheet, int row, int column, String cell, boolean number) {
    if (number && cell.length() <= MOST_DIGITS && NUMBER.matcher(cell).matches()) {
      int point = cell.indexOf('.');
      sheet.value(row, column, new BigDecimal(cell));
      int decimals = point < 0 ? 0 : cell.length() - point - 1;
      sheet.style(row, column).format(decimals == 0 ? "0" : "0." + "0".repeat(decimals)).set();
    } else if (!cell.isEmpty()) {
      sheet.value(row, column, cell);
    }
  }

  private static void about(Worksheet sheet, List<Dataset> tables, Map<String, Object> provenance) {
    int row = 0;
    for (Map.Entry<String, Object> fact : provenance.entrySet()) {
      sheet.value(row, 0, fact.getKey());
      sheet.value(row++, 1, String.valueOf(fact.getValue()));
    }
    row++;
    for (Dataset table : tables) {
      for (Dataset.Column column : table.columns()) {
        sheet.value(row, 0, table.name());
        sheet.value(row, 1, column.name());
        sheet.value(row, 2, column.unit());
        sheet.value(row++, 3, column.meaning());
      }
    }
    sheet.width(0, 22);
    sheet.width(1, 40);
    sheet.width(3, WIDEST);
  }
}
