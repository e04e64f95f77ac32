package org.siltbench.calc.result;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.FilterFitness;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;

/**
 * What few rows have beside masses and a volume. Each is null (or false) where it is not given.
 *
 * @param part sand or fines weighed apart
 * @param ignited the mass after the furnace
 * @param material what the filter is made of
 * @param muffledCelsius at what temperature it was heated before the pre-weigh, °C; zero for not at
 *     all
 * @param expectedMgPerL what a reference sample should give, mg/L
 * @param expectedU its standard uncertainty, mg/L
 * @param mixture mass of water and sediment, in place of a volume
 * @param filtrate true where the volume is that of the water which passed, not of the mixture
 * @param dissolvedMgPerL dissolved solids of the water, mg/L
 * @param dissolvedU their standard uncertainty, mg/L
 * @param dried volume of the water that dried up with the sediment
 */
public record RowExtras(
    @Nullable Fraction part,
    @Nullable Mass ignited,
    FilterFitness.@Nullable Material material,
    @Nullable Double muffledCelsius,
    @Nullable Double expectedMgPerL,
    @Nullable Double expectedU,
    @Nullable Mass mixture,
    boolean filtrate,
    @Nullable Double dissolvedMgPerL,
    @Nullable Double dissolvedU,
    @Nullable Volume dried) {

  /** Nothing of all this. */
  public static final RowExtras NONE =
      new RowExtras(null, null, null, null, null, null, null, false, null, null, null);

  boolean isSand() {
    return part != null && part.isSand();
  }
}
