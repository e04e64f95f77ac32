package org.siltbench.station.work.exchange;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A unit written behind a number in its cell. */
final class CellUnit {

  private static final Pattern PARTS =
      Pattern.compile(
          "([+\\-\u2212]?[\\d.,'’ \u00A0\u2009\u202F]*\\d)\\s*(\\p{L}[\\p{L}/]*|°\\s?[CFcf]|[µμ]S/cm)");

  private CellUnit() {}

  /** The unit; empty if there is none that is known. */
  static String of(String cell) {
    Matcher parts = PARTS.matcher(cell.strip());
    return parts.matches() && Units.known(parts.group(2)) ? parts.group(2) : "";
  }

  /** The cell without it. */
  static String without(String cell) {
    Matcher parts = PARTS.matcher(cell.strip());
    return parts.matches() && Units.known(parts.group(2)) ? parts.group(1) : cell.strip();
  }
}
