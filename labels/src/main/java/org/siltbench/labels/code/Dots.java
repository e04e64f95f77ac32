package org.siltbench.labels.code;

import org.siltbench.calc.reason.Unfit;
import org.siltbench.labels.PapersSay;

/**
 * The dot grid of a printer.
 *
 * @param dpi dots per inch
 */
public record Dots(int dpi) {

  private static final double MM_PER_INCH = 25.4;

  /** The smallest module a hand-held reader is trusted with, millimetres; common practice. */
  public static final double SMALLEST_MODULE = 0.165;

  public Dots {
    if (dpi < 150 || dpi > 2400) {
      throw new Unfit(PapersSay.DPI, dpi);
    }
  }

  /** One dot in millimetres. */
  public double dot() {
    return MM_PER_INCH / dpi;
  }

  /** The dot line nearest to a position in millimetres. */
  public double snap(double position) {
    return Math.round(position / dot()) * dot();
  }

  /** The fewest whole dots, at least two, that make a module readable. */
  public int fewest() {
    return Math.max(2, (int) Math.ceil(SMALLEST_MODULE / dot() - 1e-9));
  }

  /** The most whole dots a module may take so that a number of modules fits a length. */
  public int mostFor(int modules, double length) {
    return (int) Math.floor(length / (modules * dot()) + 1e-6);
  }
}
