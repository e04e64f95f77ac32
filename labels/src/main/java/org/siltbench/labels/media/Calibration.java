package org.siltbench.labels.media;

import org.siltbench.calc.reason.Unfit;
import org.siltbench.labels.PapersSay;

/**
 * How far a printer is off on this stock: everything drawn is multiplied by the scale, then moved.
 *
 * @param moveRight millimetres to move the print to the right
 * @param moveDown millimetres to move the print down
 * @param scaleAcross factor across the page, 1 for a true printer
 * @param scaleDown factor down the page
 */
public record Calibration(double moveRight, double moveDown, double scaleAcross, double scaleDown) {

  /** A printer that is true. */
  public static final Calibration NONE = new Calibration(0, 0, 1, 1);

  private static final double FARTHEST = 20;
  private static final Object[] MOVES = {-20, PapersSay.MILLIMETRES.with(20)};
  private static final Object[] SCALES = {0.9, 1.1};

  public Calibration {
    require(Math.abs(moveRight) <= FARTHEST, PapersSay.MOVE_RIGHT, moveRight, MOVES);
    require(Math.abs(moveDown) <= FARTHEST, PapersSay.MOVE_DOWN, moveDown, MOVES);
    require(scaleAcross >= 0.9 && scaleAcross <= 1.1, PapersSay.SCALE_ACROSS, scaleAcross, SCALES);
    require(scaleDown >= 0.9 && scaleDown <= 1.1, PapersSay.SCALE_DOWN, scaleDown, SCALES);
  }

  private static void require(boolean holds, PapersSay what, double value, Object[] limits) {
    if (!holds) {
      throw new Unfit(PapersSay.CALIBRATION, what.with(), value, limits[0], limits[1]);
    }
  }

  /**
   * The calibration that follows from a printed ruler page.
   *
   * @param printed the calibration the ruler page was printed with
   * @param across what the ruler across should be and was, and where its cross should be and was
   * @param down the same down the page
   */
  public static Calibration measured(Calibration printed, Measured across, Measured down) {
    double factorAcross = across.factor(printed.scaleAcross);
    double factorDown = down.factor(printed.scaleDown);
    return new Calibration(
        -across.offset(printed.scaleAcross, printed.moveRight) / factorAcross,
        -down.offset(printed.scaleDown, printed.moveDown) / factorDown,
        1 / factorAcross,
        1 / factorDown);
  }

  /**
   * One direction of a ruler page, millimetres.
   *
   * @param length what the ruler's length should be
   * @param found what it was
   * @param cross how far the cross should be from the edge
   * @param foundCross how far it was
   */
  public record Measured(double length, double found, double cross, double foundCross) {

    private double factor(double scale) {
      return found / (length * scale);
    }

    private double offset(double scale, double move) {
      return foundCross - factor(scale) * (cross * scale + move);
    }
  }

  public boolean isNone() {
    return equals(NONE);
  }
}
