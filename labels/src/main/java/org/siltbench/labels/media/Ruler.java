package org.siltbench.labels.media;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The ruler page of one kind of stock, millimetres: what it should measure on a true printer.
 *
 * @param across length of the ruler across
 * @param down length of the ruler down
 * @param left from the left edge to the corner where the rulers meet
 * @param top from the top edge to that corner
 * @param printedWith the calibration the page is printed with
 */
public record Ruler(double across, double down, double left, double top, Calibration printedWith) {

  private static final double TENTH = 10;
  private static final double SMALL_PAGE = 60;

  /** The longest rulers of whole centimetres that fit the page. */
  public static Ruler of(Media media) {
    double left = inset(media.pageWidth());
    double top = inset(media.pageHeight());
    return new Ruler(
        length(media.pageWidth(), left),
        length(media.pageHeight(), top),
        left,
        top,
        media.calibration());
  }

  private static double inset(double page) {
    return page < SMALL_PAGE ? TENTH / 2 : TENTH;
  }

  private static double length(double page, double inset) {
    return Math.max(
        TENTH, Math.floor((page - inset) / TENTH) * TENTH - (page < SMALL_PAGE ? 0 : TENTH));
  }

  /**
   * The calibration that makes the printer true.
   *
   * @param measured ruler across, ruler down, corner from the left, corner from the top
   * @throws IllegalArgumentException if a printer cannot be that far off
   */
  public Calibration calibration(List<Double> measured) {
    return Calibration.measured(
        printedWith,
        new Calibration.Measured(across, measured.get(0), left, measured.get(2)),
        new Calibration.Measured(down, measured.get(1), top, measured.get(3)));
  }

  /** A length or factor as people write it. */
  public static String text(double value) {
    return BigDecimal.valueOf(value)
        .setScale(4, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
