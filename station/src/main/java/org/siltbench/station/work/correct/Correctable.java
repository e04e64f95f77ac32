package org.siltbench.station.work.correct;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.Problem;

/** The fields of every kind of entry that a correction may set, and what each holds. */
final class Correctable {

  private static final Map<String, FieldType> WEIGHING =
      Map.ofEntries(
          entry("filter", FieldType.FILTER),
          entry("mass_g", FieldType.MASS),
          entry("u_g", FieldType.DECIMAL),
          entry("resolution_g", FieldType.DECIMAL),
          entry("moisture_mg", FieldType.DECIMAL),
          entry("balance", FieldType.TEXT),
          entry("cycle", FieldType.TEXT),
          entry("dish", FieldType.TEXT),
          entry("purpose", FieldType.TEXT),
          entry("round", FieldType.WHOLE),
          entry("stated_at", FieldType.TIME));

  private static final Map<String, FieldType> RECEIPT =
      Map.ofEntries(
          entry("filter", FieldType.FILTER),
          entry("sample", FieldType.TEXT),
          entry("role", FieldType.ROLE),
          entry("pair", FieldType.TEXT),
          entry("pair_kind", FieldType.TEXT),
          entry("filter_order", FieldType.WHOLE),
          entry("site", FieldType.TEXT),
          entry("collected", FieldType.TIME),
          entry("filtered_from", FieldType.TIME),
          entry("filtered_to", FieldType.TIME),
          entry("taken", FieldType.TEXT),
          entry("portions_ml", FieldType.PORTIONS),
          entry("left_ml", FieldType.VOLUME),
          entry("left_to", FieldType.TEXT),
          entry("volume_ml", FieldType.VOLUME),
          entry("volume_u_ml", FieldType.DECIMAL),
          entry("rinse", FieldType.TEXT),
          entry("condition", FieldType.TEXT),
          entry("gauge_m", FieldType.DECIMAL),
          entry("water_c", FieldType.DECIMAL),
          entry("conductivity_us_cm", FieldType.DECIMAL),
          entry("trip", FieldType.TEXT),
          entry("remarks", FieldType.TEXT),
          entry("by", FieldType.TEXT),
          entry("part", FieldType.TEXT),
          entry("expected_mg_l", FieldType.DECIMAL),
          entry("expected_u_mg_l", FieldType.DECIMAL));

  private static final Map<String, FieldType> DRYING =
      Map.of(
          "temperature_c", FieldType.DECIMAL,
          "thermometer", FieldType.TEXT,
          "in", FieldType.TIME,
          "out", FieldType.TIME,
          "cooled_until", FieldType.PLAN,
          "useful_until", FieldType.PLAN);

  private static final Map<String, FieldType> CHECK =
      Map.of(
          "balance", FieldType.TEXT,
          "weight", FieldType.TEXT,
          "phase", FieldType.TEXT,
          "certified_g", FieldType.MASS,
          "reading_g", FieldType.MASS,
          "error_mg", FieldType.DECIMAL,
          "limit_mg", FieldType.DECIMAL,
          "pass", FieldType.FLAG);

  private static final Map<String, FieldType> LOT =
      Map.of(
          "maker_lot", FieldType.TEXT,
          "material", FieldType.TEXT,
          "pore_um", FieldType.DECIMAL,
          "diameter_mm", FieldType.DECIMAL,
          "washed", FieldType.FLAG,
          "dried", FieldType.FLAG,
          "muffled", FieldType.FLAG);

  private static final Map<String, FieldType> TRIP =
      Map.of(
          "trip", FieldType.TEXT,
          "to", FieldType.TEXT,
          "out", FieldType.TIME,
          "relinquished", FieldType.TEXT,
          "received", FieldType.TEXT,
          "time", FieldType.TIME,
          "bags", FieldType.WHOLE,
          "seals", FieldType.TEXT,
          "temperature_c", FieldType.DECIMAL);

  private static final Map<String, Map<String, FieldType>> KINDS =
      Map.ofEntries(
          entry("weighing", WEIGHING),
          entry("sample.received", RECEIPT),
          entry("dry.started", DRYING),
          entry("dry.ended", DRYING),
          entry("check.weighed", CHECK),
          entry("lot.created", LOT),
          entry("lot.tested", Map.of("losses_mg", FieldType.TEXT, "pass", FieldType.FLAG)),
          entry("batch.created", Map.of("name", FieldType.TEXT)),
          entry("batch.issued", TRIP),
          entry("batch.returned", TRIP),
          entry("custody", TRIP),
          entry("bag.missing", Map.of("filter", FieldType.FILTER, "remarks", FieldType.TEXT)),
          entry("bag.closed", Map.of("filter", FieldType.FILTER)),
          entry("label.printed", Map.of("filter", FieldType.FILTER, "mass_g", FieldType.MASS)),
          entry("hold", Map.of("reason", FieldType.TEXT)),
          entry("filter.rejected", Map.of("filter", FieldType.FILTER, "reason", FieldType.TEXT)),
          entry(
              "room.noted",
              Map.of(
                  "temperature_c", FieldType.DECIMAL,
                  "pressure_hpa", FieldType.DECIMAL,
                  "humidity_pct", FieldType.DECIMAL)),
          entry(
              "balance.described",
              Map.of(
                  "serial", FieldType.TEXT,
                  "resolution_g", FieldType.DECIMAL,
                  "capacity_g", FieldType.DECIMAL,
                  "calibrated", FieldType.TEXT,
                  "due", FieldType.TEXT,
                  "linearity_mg", FieldType.DECIMAL,
                  "eccentricity_mg", FieldType.DECIMAL,
                  "repeatability_mg", FieldType.DECIMAL,
                  "u_cert_mg", FieldType.DECIMAL,
                  "where", FieldType.TEXT)),
          entry(
              "weight.described",
              Map.of(
                  "nominal_g", FieldType.MASS,
                  "certified_g", FieldType.MASS,
                  "u_mg", FieldType.DECIMAL,
                  "certificate", FieldType.TEXT,
                  "due", FieldType.TEXT)));

  private Correctable() {}

  /** The fields of a kind, in order; none if its entries stand for good. */
  static List<String> fields(String kind) {
    return KINDS.getOrDefault(kind, Map.of()).keySet().stream().sorted().toList();
  }

  /**
   * What a field of a kind holds.
   *
   * @throws Problem.Refused if entries of the kind stand for good
   * @throws Problem.WrongUse if the kind has no such field
   */
  static FieldType type(String kind, String field) {
    Map<String, FieldType> fields =
        Optional.ofNullable(KINDS.get(kind)).orElseThrow(() -> fixed(kind));
    if (field.equals("void")) {
      return FieldType.FLAG;
    }
    FieldType type = fields.get(field);
    if (type == null) {
      throw new Problem.WrongUse(
          CorrectSays.NO_FIELD,
          kind,
          field,
          String.join(", ", fields.keySet().stream().sorted().toList()));
    }
    return type;
  }

  private static Problem.Refused fixed(String kind) {
    return new Problem.Refused(CorrectSays.STANDS, kind);
  }
}
