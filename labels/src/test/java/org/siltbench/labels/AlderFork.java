package org.siltbench.labels;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.labels.label.BagLabel;

/** Invented papers of an invented storm on an invented stream. */
public final class AlderFork {

  public static final OffsetDateTime MADE = OffsetDateTime.parse("2026-03-14T16:20:00+01:00");
  public static final String HEAD =
      "3f9c1b7de2a84405c6d0917b5e3a28f4416cbd9070aa52e1c8d3f64b19e7027d";
  public static final BatchCode BATCH = BatchCode.of(new BenchCode("K3DF"), 7);

  private AlderFork() {}

  public static Imprint imprint() {
    return imprint(false);
  }

  public static Imprint imprint(boolean practice) {
    return new Imprint("Alder Fork bench", "K3DF", HEAD, 1204, MADE, practice, Imprint.PageSize.A4);
  }

  public static List<FilterId> filters(int count) {
    return BATCH.filters(count);
  }

  static String mass(int i) {
    return String.format(Locale.ROOT, "0.%05d", 12_100 + (i * 7919) % 1300);
  }

  static String role(int i) {
    return switch (i % 12) {
      case 4 -> "field-blank";
      case 9 -> "trip-blank";
      case 11 -> "method-blank";
      default -> "sample";
    };
  }

  public static List<BagLabel> labels(int count, boolean practice) {
    List<BagLabel> out = new ArrayList<>();
    List<FilterId> ids = BATCH.filters(Math.min(count, 500));
    for (int i = 0; i < count; i++) {
      FilterId id = ids.get(i % ids.size());
      BagCode code = new BagCode(id, mass(i), 1);
      out.add(
          new BagLabel(
              code.text(),
              id.text(),
              mass(i) + " g",
              1,
              role(i),
              i % 12 == 6,
              "Alder Fork, March",
              practice));
    }
    return out;
  }
}
