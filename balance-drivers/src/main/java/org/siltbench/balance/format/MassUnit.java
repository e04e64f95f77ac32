package org.siltbench.balance.format;

import java.util.Optional;

/** A unit of mass a balance may show; each is a whole number of nanograms. */
public enum MassUnit {
  GRAM("g", 9, 1),
  MILLIGRAM("mg", 6, 1),
  KILOGRAM("kg", 12, 1),
  MICROGRAM("µg", 3, 1),
  /** The metric carat, 0.2 g. */
  CARAT("ct", 8, 2);

  private final String symbol;
  private final int exponent;
  private final int factor;

  MassUnit(String symbol, int exponent, int factor) {
    this.symbol = symbol;
    this.exponent = exponent;
    this.factor = factor;
  }

  /** The usual symbol. */
  public String symbol() {
    return symbol;
  }

  /** One unit is {@link #factor} times ten to this power of nanograms. */
  int exponent() {
    return exponent;
  }

  int factor() {
    return factor;
  }

  /** The unit of a usual symbol; {@code ug} is taken for µg. */
  public static Optional<MassUnit> ofSymbol(String text) {
    for (MassUnit unit : values()) {
      if (unit.symbol.equals(text)) {
        return Optional.of(unit);
      }
    }
    return text.equals("ug") ? Optional.of(MICROGRAM) : Optional.empty();
  }
}
