package org.siltbench.labels.draw;

/**
 * How a text is set. One family, two weights.
 *
 * @param bold the heavier weight
 * @param points the size
 * @param ink its shade
 */
public record Type(boolean bold, double points, Ink ink) {

  public static final Type TITLE = new Type(true, 17, Ink.BLACK);
  public static final Type HEADING = new Type(true, 10.5, Ink.BLACK);
  public static final Type BODY = new Type(false, 8.5, Ink.BLACK);
  public static final Type STRONG = new Type(true, 8.5, Ink.BLACK);
  public static final Type CELL = new Type(false, 7.6, Ink.BLACK);
  public static final Type CELL_STRONG = new Type(true, 7.6, Ink.BLACK);
  public static final Type COLUMN = new Type(true, 6.6, Ink.BLACK);
  public static final Type SMALL = new Type(false, 6.6, Ink.GREY);

  /** The height of capital letters in this family, as a part of the size. */
  public static final double CAPITAL = 0.714;

  private static final double MM_PER_POINT = 25.4 / 72;

  public Type at(double newPoints) {
    return new Type(bold, newPoints, ink);
  }

  public Type in(Ink newInk) {
    return new Type(bold, points, newInk);
  }

  public Type strong() {
    return new Type(true, points, ink);
  }

  /** The size in millimetres. */
  public double size() {
    return points * MM_PER_POINT;
  }

  /** Height of a capital letter in millimetres. */
  public double capital() {
    return size() * CAPITAL;
  }

  /** From base line to base line in millimetres. */
  public double leading() {
    return size() * 1.28;
  }
}
