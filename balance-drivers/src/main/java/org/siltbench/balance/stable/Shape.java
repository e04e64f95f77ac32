package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;

/**
 * A course the display can still take beside rest; a fit of it to the readings gives its size.
 * {@code at} is its course for a watch that began at {@code begin}, seconds since the load.
 */
sealed interface Shape {

  /** Every course that is reckoned with. */
  List<Shape> ALL = all();

  double at(double seconds, double begin);

  /** Settling slower than usual; warm filters and static, 18 to 320 s; moisture, slower still. */
  private static List<Shape> all() {
    List<Shape> all = new ArrayList<>();
    for (double tau : new double[] {2.5, 5, 10}) {
      all.add(new Decay(tau, Math.log(2)));
    }
    int steps = 17;
    double width = Math.log(320.0 / 18) / steps;
    for (int i = 0; i < steps; i++) {
      all.add(new Decay(18 * Math.exp((i + 0.5) * width), width));
    }
    all.add(new Decay(430, Math.log(560.0 / 320)));
    all.add(new Decay(740, Math.log(950.0 / 560)));
    all.add(new Creep());
    all.add(new Line());
    return List.copyOf(all);
  }

  /**
   * An exponential: a settling, a warm filter, static, or moisture taken up from dry air on.
   *
   * @param width how much of the logarithm of {@code tau} it stands for
   */
  record Decay(double tau, double width) implements Shape {

    private static final double FAST = 0.03;
    private static final double CHARGED = 0.33 / 2 / Math.log(10);
    private static final double WARM = 0.33 / Math.log(9);

    @Override
    public double at(double seconds, double begin) {
      return Math.exp((begin - seconds) / tau);
    }

    /** True for a settling, which is quicker than any drift. */
    boolean isQuick() {
      return tau < 18;
    }

    /** What is left so many seconds earlier, for one that is left now, beyond that one. */
    double growth(double seconds) {
      return Math.exp(seconds / tau) - 1;
    }

    /** Prior weight, against rest, of one that sinks towards the truth: static. */
    double sinking() {
      return width * (tau < 18 ? FAST : tau < 28 ? 0.3 * CHARGED : tau < 320 ? CHARGED : 0);
    }

    /** Prior weight of one that rises towards the truth: static, a warm filter. */
    double rising() {
      return sinking() + width * (tau > 18 && tau < 200 ? WARM : 0);
    }

    /** Share of all moisture that is taken up with this time constant. */
    double moist() {
      return tau < 175 ? 0 : width * tau / 1020;
    }
  }

  /** Creep of the weighing cell: grows with the logarithm of time under load. */
  record Creep() implements Shape {
    @Override
    public double at(double seconds, double begin) {
      return Math.log1p(seconds / 5);
    }
  }

  /** A straight line: moisture taken up so slowly that its course shows no bend. */
  record Line() implements Shape {
    @Override
    public double at(double seconds, double begin) {
      return seconds - begin;
    }
  }
}
