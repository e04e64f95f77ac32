package org.siltbench.balance.practice;

/** How a balance comes to rest at a load: first order, or second order with a small overshoot. */
public final class Response {

  private static final double DAMPING = 0.7;

  private final double tau;
  private final boolean secondOrder;
  private double value;
  private double speed;

  /** At rest at zero. */
  public Response(double tauSeconds, boolean secondOrder) {
    this.tau = tauSeconds;
    this.secondOrder = secondOrder;
  }

  /** Moves on by a step in which the load does not change. */
  public void step(double load, double dt) {
    if (!secondOrder) {
      value += (load - value) * -Math.expm1(-dt / tau);
      return;
    }
    int parts = (int) Math.ceil(dt / (tau / 20));
    double h = dt / parts;
    double omega = 1 / (DAMPING * tau);
    for (int i = 0; i < parts; i++) {
      speed += h * (omega * omega * (load - value) - 2 * DAMPING * omega * speed);
      value += h * speed;
    }
  }

  /** Comes to rest at once. */
  public void settle(double load) {
    value = load;
    speed = 0;
  }

  /** Where it stands. */
  public double value() {
    return value;
  }
}
