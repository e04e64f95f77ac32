package org.siltbench.station.work.results;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.table.SafeCells;

/**
 * A table that leaves the lab, with what its columns mean.
 *
 * @param name the file's name without ending
 * @param title what it holds
 * @param columns its columns
 * @param rows its cells, in the order of the columns
 */
record Dataset(String name, String title, List<Column> columns, List<List<String>> rows) {

  /**
   * A column.
   *
   * @param name its name
   * @param type the type word of the table schema: string, number, datetime
   * @param meaning what it holds, with its unit
   */
  record Column(String name, String type, String meaning) {

    /** The unit, told by the end of the name; empty where it has none. */
    String unit() {
      if (name.endsWith("_mg_l")) {
        return "mg/L";
      }
      if (name.endsWith("_ml")) {
        return "mL";
      }
      if (name.endsWith("_mg")) {
        return "mg";
      }
      return name.endsWith("_g") ? "g" : "";
    }

    static Column text(String name, String meaning) {
      return new Column(name, "string", meaning);
    }

    static Column number(String name, String meaning) {
      return new Column(name, "number", meaning);
    }

    static Column time(String name, String meaning) {
      return new Column(name, "datetime", meaning);
    }
  }

  String path() {
    return name + ".csv";
  }

  /** The file: UTF-8, comma, no cell that a spreadsheet would run. */
  byte[] csv() {
    StringWriter out = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(out)) {
      csv.writeRecord(columns.stream().map(Column::name).toList());
      for (List<String> row : rows) {
        csv.writeRecord(row.stream().map(SafeCells::of).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a string writer does not fail", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The table schema. */
  Map<String, Object> schema() {
    List<Map<String, Object>> fields = new ArrayList<>();
    for (Column column : columns) {
      Map<String, Object> field = new LinkedHashMap<>();
      field.put("name", column.name());
      field.put("type", column.type());
      if (column.type().equals("datetime")) {
        field.put("format", "any");
      }
      field.put("description", column.meaning());
      if (!column.unit().isEmpty()) {
        field.put("unit", column.unit());
      }
      fields.add(field);
    }
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("fields", fields);
    schema.put("missingValues", List.of(""));
    return schema;
  }
}
