package org.siltbench.calc.montecarlo;

import org.siltbench.calc.stats.Checked;

/**
 * One input of a model: its best estimate and the shape of what is known about it. What acts on two
 * quantities at once (the same balance, the same check weight, a shared blank) is one input that
 * the model uses twice: that is how correlation enters.
 *
 * @param value best estimate, in the input's unit
 * @param spread shape about it
 */
public record Input(double value, Spread spread) {

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public Input {
    Checked.finite(value, "value of an input");
  }

  /** A normal input. */
  public static Input normal(double value, double standardDeviation) {
    return new Input(value, new Spread.Normal(standardDeviation));
  }

  /** A rectangular input, value ± halfWidth. */
  public static Input rectangular(double value, double halfWidth) {
    return new Input(value, new Spread.Rectangular(halfWidth));
  }

  /** A triangular input, value ± halfWidth. */
  public static Input triangular(double value, double halfWidth) {
    return new Input(value, new Spread.Triangular(halfWidth));
  }

  /** An input known as the mean of few observations. */
  public static Input student(double value, double scale, double degreesOfFreedom) {
    return new Input(value, new Spread.Student(scale, degreesOfFreedom));
  }
}
