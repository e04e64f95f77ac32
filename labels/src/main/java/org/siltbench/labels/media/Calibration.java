package org.siltbench.labels.media;

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

  public Calibration {
    require(Math.abs(moveRight) <= FARTHEST, "move right", moveRight, "-20 to 20 mm");
    require(Math.abs(moveDown) <= FARTHEST, "move down", moveDown, "-20 to 20 mm");
    require(scaleAcross >= 0.9 && scaleAcross <= 1.1, "scale across", scaleAcross, "0.9 to 1.1");
    require(scaleDown >= 0.9 && scaleDown <= 1.1, "scale down", scaleDown, "0.9 to 1.1");
  }

  private static void require(boolean holds, String what, double value, String limits) {
    if (!holds) {
      throw new IllegalArgumentException(what + " is " + value + "; it must be " + limits);
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
