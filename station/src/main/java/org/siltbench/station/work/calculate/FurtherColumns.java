package org.siltbench.station.work.calculate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.SandAndFines;
import org.siltbench.calc.result.ForPeople;
import org.siltbench.calc.result.Further;
import org.siltbench.calc.result.Ignited;
import org.siltbench.calc.result.Recovery;

/** The columns of what few results have; they follow the columns of the table that ask for them. */
public final class FurtherColumns {

  private static final List<String> SAND = List.of("sand_mg_l", "fines_mg_l", "sand_pct");
  private static final List<String> FURNACE =
      List.of("volatile_mg_l", "u_volatile_mg_l", "fixed_mg_l", "u_fixed_mg_l");
  private static final List<String> RECOVERY = List.of("recovery_pct", "u_recovery_pct");
  private static final List<String> RATIO = List.of("mass_ratio_ppm");
  private static final List<String> DISSOLVED = List.of("dissolved_mg");

  /** Which column of the input asks for which of the output. */
  private static final Map<String, List<String>> ASKED = asked();

  private FurtherColumns() {}

  private static Map<String, List<String>> asked() {
    Map<String, List<String>> out = new LinkedHashMap<>();
    out.put("part", SAND);
    out.put("ignited_g", FURNACE);
    out.put("expected_mg_l", RECOVERY);
    out.put("mixture_g", RATIO);
    out.put("dissolved_mg_l", DISSOLVED);
    return out;
  }

  /** The names that a table's own columns ask for, in order. */
  public static List<String> askedBy(List<String> columns) {
    List<String> lower = columns.stream().map(c -> c.strip().toLowerCase(Locale.ROOT)).toList();
    List<String> out = new ArrayList<>();
    ASKED.forEach(
        (column, names) -> {
          if (lower.contains(column)) {
            out.addAll(names);
          }
        });
    return out;
  }

  /** All that a result has of these, unrounded; empty for most. */
  public static Map<String, Double> exact(@Nullable Further further) {
    Map<String, Double> out = new LinkedHashMap<>();
    if (further == null) {
      return out;
    }
    SandAndFines sand = further.sandAndFines();
    if (sand != null) {
      put(out, SAND, sand.sand(), sand.fines(), sand.sandPercent());
    }
    Ignited ignited = further.ignited();
    if (ignited != null) {
      put(
          out,
          FURNACE,
          ignited.volatileMgPerL(),
          ignited.volatileU(),
          ignited.fixedMgPerL(),
          ignited.fixedU());
    }
    Recovery recovery = further.recovery();
    if (recovery != null) {
      put(out, RECOVERY, recovery.percent(), recovery.u());
    }
    if (!Double.isNaN(further.partsPerMillion())) {
      put(out, RATIO, further.partsPerMillion());
    }
    if (further.dissolvedMg() > 0) {
      put(out, DISSOLVED, further.dissolvedMg());
    }
    return out;
  }

  private static void put(Map<String, Double> out, List<String> names, double... values) {
    for (int i = 0; i < values.length; i++) {
      out.put(names.get(i), values[i]);
    }
  }

  /** What a column holds, with its unit. */
  public static String meaning(String name) {
    return switch (name) {
      case "sand_mg_l" -> "sand, mg/L";
      case "fines_mg_l" -> "fines, mg/L";
      case "sand_pct" -> "sand in the sediment, %";
      case "volatile_mg_l" -> "volatile suspended solids, mg/L";
      case "fixed_mg_l" -> "fixed suspended solids, mg/L";
      case "u_volatile_mg_l", "u_fixed_mg_l" -> "their standard uncertainty, mg/L";
      case "recovery_pct" -> "recovery of the reference sample, %";
      case "u_recovery_pct" -> "its standard uncertainty, %";
      case "mass_ratio_ppm" -> "sediment by mass of the mixture, ppm";
      case "dissolved_mg" -> "dissolved solids taken off, mg";
      default -> throw new IllegalArgumentException(name);
    };
  }

  /** A figure for people; empty for none. */
  public static String rounded(String name, @Nullable Double value, int digits) {
    if (value == null || !Double.isFinite(value)) {
      return "";
    }
    return name.startsWith("u_") ? ForPeople.uncertainty(value) : ForPeople.value(value, digits, 0);
  }
}
