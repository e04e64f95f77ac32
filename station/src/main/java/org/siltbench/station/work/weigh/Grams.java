package org.siltbench.station.work.weigh;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.siltbench.station.Problem;

/** Numbers as the ledger keeps them: grams as text, with the digits that were displayed. */
public final class Grams {

  private static final int U_PLACES = 9;

  private Grams() {}

  /** The displayed digits in grams: {@code 128.74 mg} is {@code 0.12874}. */
  public static String ofDisplay(String digits, String unit) {
    return new BigDecimal(digits).movePointLeft(places(unit)).toPlainString();
  }

  /** A computed number of milligrams in grams, at most nine places, no trailing zeros. */
  public static String ofMilligrams(double milligrams) {
    BigDecimal grams =
        BigDecimal.valueOf(milligrams)
            .movePointLeft(3)
            .setScale(U_PLACES, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return grams.signum() == 0 ? "0" : grams.toPlainString();
  }

  /** A computed number, rounded to six places, no trailing zeros. */
  public static String decimal(double value) {
    BigDecimal text =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
    return text.signum() == 0 ? "0" : text.toPlainString();
  }

  private static int places(String unit) {
    return switch (unit) {
      case "g" -> 0;
      case "mg" -> 3;
      case "ug", "µg", "μg" -> 6;
      case "kg" -> -3;
      default -> throw new Problem.Refused(WeighSays.UNIT, unit);
    };
  }
}
