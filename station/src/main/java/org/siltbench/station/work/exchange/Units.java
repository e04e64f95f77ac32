package org.siltbench.station.work.exchange;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Units of field notes and what they are in the units of the receipt table. Exact decimals. */
final class Units {

  private record Unit(String of, BigDecimal factor, BigDecimal zero) {}

  private static final Map<String, Unit> UNITS =
      Map.ofEntries(
          unit("ml", "mL", "1"),
          unit("l", "mL", "1000"),
          unit("dl", "mL", "100"),
          unit("cl", "mL", "10"),
          unit("litre", "mL", "1000"),
          unit("litres", "mL", "1000"),
          unit("liter", "mL", "1000"),
          unit("liters", "mL", "1000"),
          unit("m", "m", "1"),
          unit("cm", "m", "0.01"),
          unit("mm", "m", "0.001"),
          // The international foot, exactly 0.3048 m (ISO 80000-3).
          unit("ft", "m", "0.3048"),
          unit("feet", "m", "0.3048"),
          unit("c", "°C", "1"),
          unit("degc", "°C", "1"),
          Map.entry("f", fahrenheit()),
          Map.entry("degf", fahrenheit()),
          unit("us/cm", "µS/cm", "1"),
          unit("ms/cm", "µS/cm", "1000"),
          unit("ms/m", "µS/cm", "10"));

  private static final Map<String, List<String>> OF_COLUMN =
      Map.of(
          "volume_ml", List.of("mL", "L"),
          "portions_ml", List.of("mL", "L"),
          "left_ml", List.of("mL", "L"),
          "volume_u_ml", List.of("mL", "L"),
          "gauge_m", List.of("m", "cm", "ft"),
          "water_c", List.of("°C", "°F"),
          "conductivity_us_cm", List.of("µS/cm", "mS/cm"));

  private Units() {}

  private static Map.Entry<String, Unit> unit(String word, String of, String factor) {
    return Map.entry(word, new Unit(of, new BigDecimal(factor), BigDecimal.ZERO));
  }

  /** Degrees Fahrenheit less 32, times 5/9; here rounded to 4 places afterwards. */
  private static Unit fahrenheit() {
    return new Unit("°C", new BigDecimal("0.55555555555555555556"), new BigDecimal("32"));
  }

  private static String plain(String unit) {
    return unit.strip()
        .toLowerCase(Locale.ROOT)
        .replace('\u03BC', 'u')
        .replace('\u00B5', 'u')
        .replace("°", "")
        .replace("deg ", "deg")
        .replace(" ", "");
  }

  static boolean known(String unit) {
    return UNITS.containsKey(plain(unit));
  }

  static String all() {
    return String.join(", ", new TreeSet<>(UNITS.keySet()));
  }

  /** The units a column could be in; empty for a column without. */
  static List<String> choices(String column) {
    return OF_COLUMN.getOrDefault(column, List.of());
  }

  /** True if a unit measures what the column holds. */
  static boolean fits(String unit, String column) {
    Unit known = UNITS.get(plain(unit));
    return known != null && choices(column).contains(known.of());
  }

  /** True if a number in this unit stands in the receipt table as it is. */
  static boolean isPlain(String unit) {
    return Optional.ofNullable(UNITS.get(plain(unit)))
        .map(known -> known.factor().compareTo(BigDecimal.ONE) == 0)
        .orElse(true);
  }

  /** A number in the unit of the receipt table. */
  static String converted(String number, String unit) {
    Unit known = UNITS.get(plain(unit));
    if (known == null || isPlain(unit)) {
      return number;
    }
    BigDecimal value = new BigDecimal(number).subtract(known.zero()).multiply(known.factor());
    BigDecimal shown =
        known.zero().signum() == 0 ? value : value.setScale(4, java.math.RoundingMode.HALF_EVEN);
    return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
  }
}
