package org.siltbench.calc.result;

import org.siltbench.calc.ignition.IgnitionResult;

/**
 * Volatile and fixed suspended solids of a sample.
 *
 * @param masses the split of the residue, mg
 * @param volatileMgPerL volatile solids, mg/L, signed
 * @param volatileU their standard uncertainty, mg/L
 * @param fixedMgPerL fixed solids, mg/L, signed
 * @param fixedU their standard uncertainty, mg/L
 */
public record Ignited(
    IgnitionResult masses,
    double volatileMgPerL,
    double volatileU,
    double fixedMgPerL,
    double fixedU) {

  /**
   * Masses over a volume: u² = (u(m)/V)² + (C·u(V)/V)².
   *
   * @param litres V, L, above zero
   * @param relativeVolumeU u(V)/V, zero or more
   */
  static Ignited of(IgnitionResult masses, double litres, double relativeVolumeU) {
    double gone = masses.volatileSolids() / litres;
    double fixed = masses.fixed() / litres;
    return new Ignited(
        masses,
        gone,
        Math.hypot(masses.volatileUncertainty() / litres, gone * relativeVolumeU),
        fixed,
        Math.hypot(masses.fixedUncertainty() / litres, fixed * relativeVolumeU));
  }
}
