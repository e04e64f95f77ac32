package org.siltbench.balance.stable;

/**
 * Least squares by elimination from the sums of a filter: first the two columns of the settling's
 * tail, whose size is bounded, then the level, then one shape at a time.
 */
final class Projection {

  private static final double SECOND = 400;
  private static final double SMALLEST = 1e-9;

  private double tail;
  private double second;
  private double mix;
  private double onesTail;
  private double onesSecond;
  private double valueTail;
  private double valueSecond;
  private double ones;
  private double level;
  private double squares;
  private double shapeOnes;
  private double shapeValue;
  private double shapeSquares;

  /** Takes the sums of one filter; a tail of at most {@code size} divisions may be in them. */
  void take(KindFilter f, double size, double floor, double dof) {
    double[][] x = f.fixed;
    double spread = (x[1][1] - x[0][1] * x[0][1] / x[0][0]) / dof;
    double ridge = Math.max(floor, 0.3 * spread) / (size * size);
    tail = x[2][2] + ridge;
    mix = x[2][3] / tail;
    second = x[3][3] + SECOND * ridge - mix * x[2][3];
    onesTail = x[0][2] / tail;
    onesSecond = (x[0][3] - x[0][2] * mix) / second;
    valueTail = x[1][2] / tail;
    valueSecond = (x[1][3] - x[1][2] * mix) / second;
    ones = x[0][0] - onesTail * onesTail * tail - onesSecond * onesSecond * second;
    double value = x[0][1] - onesTail * valueTail * tail - onesSecond * valueSecond * second;
    level = value / ones;
    double all = x[1][1] - valueTail * valueTail * tail - valueSecond * valueSecond * second;
    squares = Math.max(0, all - level * value);
  }

  /** Fits one shape beside the level. */
  void shape(KindFilter f, int s) {
    double byTail = f.mixed[2][s];
    double bySecond = f.mixed[3][s] - byTail * mix;
    shapeOnes = f.mixed[0][s] - onesTail * byTail - onesSecond * bySecond;
    shapeValue = f.mixed[1][s] - valueTail * byTail - valueSecond * bySecond - shapeOnes * level;
    double rest =
        f.squares[s]
            - byTail * byTail / tail
            - bySecond * bySecond / second
            - shapeOnes * shapeOnes / ones;
    shapeSquares = Math.max(rest, SMALLEST * f.squares[s]);
  }

  /** Information about the level. */
  double ones() {
    return ones;
  }

  double level() {
    return level;
  }

  /** Sum of squares about the level. */
  double squares() {
    return squares;
  }

  double logDeterminant() {
    return Math.log(ones * tail * second);
  }

  double coefficient() {
    return shapeValue / shapeSquares;
  }

  /** Information about the coefficient of the shape. */
  double information() {
    return shapeSquares;
  }

  /** What the shape takes off the sum of squares. */
  double explained() {
    return shapeValue * shapeValue / shapeSquares;
  }

  double meanShape() {
    return shapeOnes / ones;
  }
}
