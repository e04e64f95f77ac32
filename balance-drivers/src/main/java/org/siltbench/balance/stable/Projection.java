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
  private double shapeTail;
  private double shapeSecond;
  private double maskOnes;
  private double maskValue;
  private double maskSquares;
  private double maskShape;

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
    shapeTail = f.mixed[2][s];
    shapeSecond = f.mixed[3][s] - shapeTail * mix;
    shapeOnes = f.mixed[0][s] - onesTail * shapeTail - onesSecond * shapeSecond;
    shapeValue =
        f.mixed[1][s] - valueTail * shapeTail - valueSecond * shapeSecond - shapeOnes * level;
    double rest =
        f.squares[s]
            - shapeTail * shapeTail / tail
            - shapeSecond * shapeSecond / second
            - shapeOnes * shapeOnes / ones;
    shapeSquares = Math.max(rest, SMALLEST * f.squares[s]);
  }

  /** Fits one more, a mask, beside the shape fitted last, which is its partner. */
  void mask(KindFilter f, int s) {
    double byTail = f.mixed[2][s];
    double bySecond = f.mixed[3][s] - byTail * mix;
    maskOnes = f.mixed[0][s] - onesTail * byTail - onesSecond * bySecond;
    double both =
        f.paired[s]
            - byTail * shapeTail / tail
            - bySecond * shapeSecond / second
            - maskOnes * shapeOnes / ones;
    maskShape = both / shapeSquares;
    double value = f.mixed[1][s] - valueTail * byTail - valueSecond * bySecond - maskOnes * level;
    maskValue = value - maskShape * shapeValue;
    double rest =
        f.squares[s]
            - byTail * byTail / tail
            - bySecond * bySecond / second
            - maskOnes * maskOnes / ones
            - maskShape * both;
    maskSquares = Math.max(rest, SMALLEST * f.squares[s]);
  }

  double maskCoefficient() {
    return maskValue / maskSquares;
  }

  /** Information about the coefficient of the mask. */
  double maskInformation() {
    return maskSquares;
  }

  /** What shape and mask take off the sum of squares. */
  double explainedByBoth() {
    return explained() + maskValue * maskValue / maskSquares;
  }

  /** Coefficient of the shape beside the mask. */
  double coefficientBeside() {
    return coefficient() - maskShape * maskCoefficient();
  }

  /** The level that shape and mask lead to. */
  double levelBeside() {
    return level - coefficientBeside() * meanShape() - maskCoefficient() * maskOnes / ones;
  }

  /** Its variance, for noise of unit variance. */
  double levelVarianceBeside() {
    double m = meanShape();
    double rest = maskOnes / ones - maskShape * m;
    return 1 / ones + m * m / shapeSquares + rest * rest / maskSquares;
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
