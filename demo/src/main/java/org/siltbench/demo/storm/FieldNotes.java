package org.siltbench.demo.storm;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;

/** Writes the field notes as a receipt table. */
public final class FieldNotes {

  private final Storm storm;

  public FieldNotes(Storm storm) {
    this.storm = storm;
  }

  /** Writes the table. */
  public void write(List<Taken> notes, Path file) throws IOException {
    try (CsvWriter csv = CsvWriter.builder().build(file)) {
      csv.writeRecord(
          "filter",
          "sample",
          "role",
          "pair",
          "pair_kind",
          "filter_order",
          "site",
          "collected",
          "filtered_from",
          "filtered_to",
          "taken",
          "volume_ml",
          "condition",
          "gauge_m",
          "water_c",
          "conductivity_us_cm",
          "remarks",
          "by");
      notes.forEach(note -> csv.writeRecord(row(note)));
    }
  }

  private List<String> row(Taken note) {
    boolean filtered = note.millilitres() > 0;
    OffsetDateTime when = note.collected();
    double flow = storm.discharge(note.site(), when);
    return List.of(
        note.filter(),
        note.sample(),
        note.role(),
        note.pair(),
        note.pair().isEmpty() ? "" : "field-replicate",
        Integer.toString(note.order()),
        note.site().name(),
        when.toString(),
        filtered ? when.plusMinutes(2).toString() : "",
        filtered ? when.plusMinutes(8).toString() : "",
        filtered ? "aliquot" : "",
        filtered ? Integer.toString(note.millilitres()) : "",
        note.condition(),
        String.format(Locale.ROOT, "%.2f", storm.gaugeHeight(note.site(), when)),
        String.format(Locale.ROOT, "%.1f", 11.4 - 0.4 * flow),
        String.format(Locale.ROOT, "%.0f", 210 - 42 * Math.min(flow, 3)),
        note.remarks(),
        note.site().equals(Site.UPPER_FORD) ? "JR" : "TM");
  }
}
