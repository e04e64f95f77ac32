package org.siltbench.balance.stable;

/** The upper tail of Student's distribution: asked for millions of times. */
final class StudentTail {

  private static final double FARTHEST = 40;

  private StudentTail() {}

  /** P(T above x), by Wallace's approximation with the normal tail. */
  static double above(double x, double dof) {
    if (x > FARTHEST) {
      return 0;
    }
    double z = (8 * dof + 1) / (8 * dof + 3) * Math.sqrt(dof * Math.log(1 + x * x / dof));
    return NormalTail.above(x < 0 ? -z : z);
  }
}
