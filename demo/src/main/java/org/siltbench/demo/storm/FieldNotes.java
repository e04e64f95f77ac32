package org.siltbench.demo.storm;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Fills in the field sheet's table as people at the stream do; unused bags stay untouched. */
public final class FieldNotes {

  private final Storm storm;

  public FieldNotes(Storm storm) {
    this.storm = storm;
  }

  /** Copies the sheet with the notes written into it. */
  public void fillIn(Path sheet, List<Taken> notes, Path filled) throws IOException {
    Map<String, Taken> byFilter = new LinkedHashMap<>();
    notes.forEach(note -> byFilter.put(note.filter(), note));
    try (CsvReader<NamedCsvRecord> in = CsvReader.builder().ofNamedCsvRecord(sheet);
        CsvWriter out = CsvWriter.builder().build(filled)) {
      boolean first = true;
      for (NamedCsvRecord line : in) {
        if (first) {
          out.writeRecord(line.getHeader());
          first = false;
        }
        out.writeRecord(cells(line, byFilter));
      }
    }
  }

  private List<String> cells(NamedCsvRecord line, Map<String, Taken> byFilter) {
    Taken note = byFilter.get(line.getField("filter"));
    Map<String, String> written = note == null ? Map.of() : written(note);
    List<String> cells = new ArrayList<>();
    for (String column : line.getHeader()) {
      cells.add(written.getOrDefault(column, line.getField(column)));
    }
    return cells;
  }

  private Map<String, String> written(Taken note) {
    OffsetDateTime when = note.collected();
    double flow = storm.discharge(note.site(), when);
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put("sample", note.sample());
    cells.put("role", note.role());
    cells.put("pair", note.pair());
    cells.put("pair_kind", note.pair().isEmpty() ? "" : "field-replicate");
    cells.put("filter_order", Integer.toString(note.order()));
    cells.put("site", note.site().name());
    cells.put("collected", when.toString());
    cells.put("taken", note.millilitres() > 0 ? "aliquot" : "");
    if (note.millilitres() > 0) {
      cells.put("filtered_from", when.plusMinutes(2).toString());
      cells.put("filtered_to", when.plusMinutes(8).toString());
      cells.put("volume_ml", Integer.toString(note.millilitres()));
    }
    cells.put("condition", note.condition());
    cells.put("gauge_m", number("%.2f", storm.gaugeHeight(note.site(), when)));
    cells.put("water_c", number("%.1f", 11.4 - 0.4 * flow));
    cells.put("conductivity_us_cm", number("%.0f", 210 - 42 * Math.min(flow, 3)));
    cells.put("remarks", note.remarks());
    cells.put("by", note.site().equals(Site.UPPER_FORD) ? "JR" : "TM");
    return cells;
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }
}
