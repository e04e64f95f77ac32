package org.siltbench.balance.stable;

/**
 * The tail of the balance's own settling, at the head of a stretch: fitted as a fast exponential
 * beside a straight line, and cut where it has sunk into the noise.
 */
final class Tail {

  private static final double TAU_S = 1.5;
  private static final double SUNK = 0.4;
  private static final double HARMLESS = 0.04;
  private static final int LEAST = 6;

  private Tail() {}

  /** The first block that is free of the tail. */
  static int end(Blocks blocks, int from, double tolerance) {
    int n = blocks.size() - from;
    if (n < LEAST) {
      return from;
    }
    double begin = blocks.time(from);
    double span = blocks.time(blocks.size() - 1) - begin;
    double[] m = new double[10];
    for (int i = from; i < blocks.size(); i++) {
      add(
          m,
          blocks.count(i),
          basis(blocks.time(i) - begin),
          line(blocks.time(i) - begin, span),
          blocks.value(i) - blocks.value(from));
    }
    double[] fit = solve(m);
    double sigma = Math.sqrt(Math.max(residual(m, fit), 0) / (n - 3) / (m[0] / n));
    double sunk =
        TAU_S * Math.log(Math.abs(fit[1]) / Math.max(SUNK * sigma + 1e-3, HARMLESS * tolerance));
    int at = from;
    while (at < blocks.size() && blocks.time(at) - begin < sunk) {
      at++;
    }
    return at;
  }

  private static double basis(double t) {
    return Math.exp(-t / TAU_S);
  }

  private static double line(double t, double span) {
    return t / span;
  }

  /** Sums: w, wa, wb, waa, wab, wbb, wx, wax, wbx, wxx. */
  private static void add(double[] m, double w, double a, double b, double x) {
    m[0] += w;
    m[1] += w * a;
    m[2] += w * b;
    m[3] += w * a * a;
    m[4] += w * a * b;
    m[5] += w * b * b;
    m[6] += w * x;
    m[7] += w * a * x;
    m[8] += w * b * x;
    m[9] += w * x * x;
  }

  private static double residual(double[] m, double[] fit) {
    return m[9] - fit[0] * m[6] - fit[1] * m[7] - fit[2] * m[8];
  }

  private static double[] solve(double[] m) {
    double aa = m[3] - m[1] * m[1] / m[0];
    double ab = m[4] - m[1] * m[2] / m[0];
    double bb = m[5] - m[2] * m[2] / m[0];
    double ax = m[7] - m[1] * m[6] / m[0];
    double bx = m[8] - m[2] * m[6] / m[0];
    double det = aa * bb - ab * ab;
    double a = (ax * bb - bx * ab) / det;
    double b = (bx * aa - ax * ab) / det;
    return new double[] {(m[6] - a * m[1] - b * m[2]) / m[0], a, b};
  }
}
