package org.siltbench.demo.coverage;

/**
 * How often the truth lay within the stated interval.
 *
 * @param samples how many were tried
 * @param firstOrder how often within value ± U of the first order
 * @param distributions how often within the interval by distributions
 */
public record Coverage(int samples, int firstOrder, int distributions) {

  /** Both together. */
  public Coverage plus(Coverage other) {
    return new Coverage(
        samples + other.samples,
        firstOrder + other.firstOrder,
        distributions + other.distributions);
  }
}
