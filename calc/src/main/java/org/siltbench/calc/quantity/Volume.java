package org.siltbench.calc.quantity;

/**
 * An exact volume, a whole number of nanolitres.
 *
 * @param nanolitres the signed volume, nL
 */
public record Volume(long nanolitres) implements Comparable<Volume> {

  /** No volume. */
  public static final Volume ZERO = new Volume(0);

  private static final int MILLILITRE_SCALE = 6;

  /**
   * Reads a decimal number of millilitres, for example {@code "200"} or {@code "187.5"}.
   *
   * @throws NumberFormatException if the text is not a plain decimal number, is finer than one
   *     nanolitre or out of range
   */
  public static Volume ofMillilitres(String text) {
    return new Volume(FixedPoint.parse(text, MILLILITRE_SCALE, "a volume in millilitres"));
  }

  /** A volume from a computed number of millilitres, rounded to the nearest nanolitre. */
  public static Volume ofMillilitres(double millilitres) {
    if (!(Math.abs(millilitres) < 9.2e12)) {
      throw new IllegalArgumentException("not a volume in millilitres: " + millilitres);
    }
    return new Volume(Math.round(millilitres * 1e6));
  }

  /** This volume plus another. */
  public Volume plus(Volume other) {
    return new Volume(Math.addExact(nanolitres, other.nanolitres));
  }

  /** This volume less another; the sign is kept. */
  public Volume minus(Volume other) {
    return new Volume(Math.subtractExact(nanolitres, other.nanolitres));
  }

  /** True above zero. */
  public boolean isPositive() {
    return nanolitres > 0;
  }

  /** The volume in litres, as the nearest binary floating-point number: for statistics only. */
  public double litres() {
    return nanolitres / 1e9;
  }

  /** The volume in millilitres, as the nearest binary floating-point number. */
  public double millilitres() {
    return nanolitres / 1e6;
  }

  /** The exact volume in millilitres, without trailing zeros. */
  public String toMillilitres() {
    return FixedPoint.plain(nanolitres, MILLILITRE_SCALE);
  }

  @Override
  public int compareTo(Volume other) {
    return Long.compare(nanolitres, other.nanolitres);
  }

  @Override
  public String toString() {
    return toMillilitres() + " mL";
  }
}
