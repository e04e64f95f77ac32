package org.siltbench.calc.montecarlo;

import org.siltbench.calc.stats.Checked;

/**
 * The shape assigned to an input, JCGM 101:2008 table 1. All shapes are symmetric about the value.
 */
public sealed interface Spread {

  /** The standard deviation of the shape, in the unit of the input; NaN where it does not exist. */
  double standardDeviation();

  /**
   * Normal.
   *
   * @param standardDeviation zero or more
   */
  record Normal(double standardDeviation) implements Spread {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public Normal {
      Checked.notNegative(standardDeviation, "standard deviation");
    }
  }

  /**
   * Rectangular, ± halfWidth.
   *
   * @param halfWidth zero or more; a reading of resolution d has d/2
   */
  record Rectangular(double halfWidth) implements Spread {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public Rectangular {
      Checked.notNegative(halfWidth, "half-width");
    }

    @Override
    public double standardDeviation() {
      return halfWidth / Math.sqrt(3);
    }
  }

  /**
   * Triangular, ± halfWidth: the difference of two readings of resolution d has half-width d.
   *
   * @param halfWidth zero or more
   */
  record Triangular(double halfWidth) implements Spread {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public Triangular {
      Checked.notNegative(halfWidth, "half-width");
    }

    @Override
    public double standardDeviation() {
      return halfWidth / Math.sqrt(6);
    }
  }

  /**
   * Scaled and shifted Student t: a mean of few observations, JCGM 101:2008 6.4.9.
   *
   * @param scale s/√n, zero or more; the GUM's standard uncertainty
   * @param degreesOfFreedom 1 or more, finite
   */
  record Student(double scale, double degreesOfFreedom) implements Spread {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is out of range
     */
    public Student {
      Checked.notNegative(scale, "scale");
      Checked.within(degreesOfFreedom, 1, 1e12, "degrees of freedom");
    }

    @Override
    public double standardDeviation() {
      return degreesOfFreedom > 2
          ? scale * Math.sqrt(degreesOfFreedom / (degreesOfFreedom - 2))
          : Double.NaN;
    }
  }
}
