package org.siltbench.balance.format;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.balance.format.LineFormat.Units;

/** How many nanograms the last digit of a number is worth, by unit and decimals. */
final class Scales {

  /** More digits than any mass in nanograms has. */
  static final int MAX_DIGITS = 18;

  /** More decimals than a format allows. */
  private static final int PLACES = 10;

  private static final long MOST = Long.MAX_VALUE / 10;
  private static final long[] POWERS = powers();

  private final MassUnit[] units;
  private final long[] scales;

  private Scales(MassUnit[] units) {
    this.units = units;
    scales = new long[units.length * PLACES];
    for (int i = 0; i < scales.length; i++) {
      int exponent = units[i / PLACES].exponent() - i % PLACES;
      scales[i] = exponent < 0 ? 0 : units[i / PLACES].factor() * POWERS[exponent];
    }
  }

  /** The units by the place of their text; behind them the supplied one, if there is one. */
  static Scales of(List<MassUnit> texts, Units format) {
    List<MassUnit> all = new ArrayList<>(texts);
    boolean onlyOne = all.stream().distinct().count() == 1;
    if (format.supplied() != null) {
      all.add(format.supplied());
    } else if (format.missing() == Meaning.MOVING && onlyOne) {
      all.add(all.get(0));
    }
    return new Scales(all.toArray(new MassUnit[0]));
  }

  static long power(int exponent) {
    return POWERS[exponent];
  }

  private static long[] powers() {
    long[] all = new long[MAX_DIGITS + 1];
    all[0] = 1;
    for (int i = 1; i < all.length; i++) {
      all[i] = all[i - 1] * 10;
    }
    return all;
  }

  int count() {
    return units.length;
  }

  MassUnit unit(int place) {
    return units[place];
  }

  /** What the last digit is worth in nanograms; 0 if less than one. */
  long of(int unit, int decimals) {
    return scales[unit * PLACES + decimals];
  }

  /** Computes the mass from the number and the unit found. */
  void weigh(Match found) {
    long scale = of(found.unit, found.decimals);
    long value = found.mantissa * scale;
    boolean fits = Math.multiplyHigh(found.mantissa, scale) == 0 && value >= 0;
    if (scale == 0) {
      weighFiner(found);
    } else {
      found.nanograms = found.negative ? -value : value;
      found.inRange = fits && found.mantissa <= MOST;
    }
  }

  /** More decimals than nanograms have: a mass only if they are zeros. */
  private void weighFiner(Match found) {
    MassUnit in = units[found.unit];
    long divisor = POWERS[found.decimals - in.exponent()];
    long value = found.mantissa * in.factor();
    found.nanograms = found.negative ? -(value / divisor) : value / divisor;
    found.inRange = found.mantissa <= MOST && value % divisor == 0;
  }
}
