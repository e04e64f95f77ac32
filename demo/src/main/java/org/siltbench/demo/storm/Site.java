package org.siltbench.demo.storm;

/**
 * One invented place on the stream.
 *
 * @param name how the field notes call it
 * @param lagMinutes how much later the flood wave passes than at the first site
 * @param baseFlow discharge before the storm, m³/s
 * @param peakFlow discharge added at the peak, m³/s
 * @param baseConcentration suspended sediment before the storm, mg/L
 * @param peakConcentration suspended sediment added at the peak, mg/L
 */
public record Site(
    String name,
    int lagMinutes,
    double baseFlow,
    double peakFlow,
    double baseConcentration,
    double peakConcentration) {

  /** Where the forest road crosses: the first flush passes here. */
  public static final Site UPPER_FORD = new Site("Upper ford", 0, 0.14, 1.9, 9, 780);

  /** Below the beaver meadow: later, wider, less. */
  public static final Site MEADOW_OUTLET = new Site("Meadow outlet", 50, 0.22, 2.6, 7, 430);
}
