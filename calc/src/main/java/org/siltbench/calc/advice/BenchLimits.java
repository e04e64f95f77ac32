package org.siltbench.calc.advice;

import org.siltbench.calc.stats.Checked;

/**
 * What the bench can do, for advice on volumes.
 *
 * @param leastResidue the method's least residue, mg, zero or more
 * @param mostResidue the method's most, mg, above the least
 * @param residueUncertainty standard uncertainty of a residue on this balance, blank included, mg,
 *     above zero
 * @param volumeUncertainty the part of u(V) that does not grow with V (reading the mark), mL, zero
 *     or more
 * @param volumeRelative the part of u(V) that grows with V, relative, zero or more
 * @param leastVolume least volume that can be measured out, mL, above zero
 * @param mostVolume most that bottle and filter take, mL, above the least
 */
public record BenchLimits(
    double leastResidue,
    double mostResidue,
    double residueUncertainty,
    double volumeUncertainty,
    double volumeRelative,
    double leastVolume,
    double mostVolume) {

  /**
   * Checks the numbers.
   *
   * @throws IllegalArgumentException if one is out of range
   */
  public BenchLimits {
    Checked.notNegative(leastResidue, "least residue in mg");
    Checked.positive(mostResidue - leastResidue, "most residue above the least, in mg");
    Checked.positive(residueUncertainty, "u(residue) in mg");
    Checked.notNegative(volumeUncertainty, "u(volume) in mL");
    Checked.notNegative(volumeRelative, "relative u(volume)");
    Checked.positive(leastVolume, "least volume in mL");
    Checked.positive(mostVolume - leastVolume, "most volume above the least, in mL");
  }

  /**
   * The relative standard uncertainty of a concentration: √((u_m/m)² + (u_V/V)² + rel²), with m =
   * C·V.
   *
   * @param milligramsPerLitre above zero
   * @param millilitres above zero
   * @throws IllegalArgumentException if a number is not above zero
   */
  public double relativeUncertainty(double milligramsPerLitre, double millilitres) {
    Checked.positive(milligramsPerLitre, "concentration in mg/L");
    Checked.positive(millilitres, "volume in mL");
    double mass = residueUncertainty / (milligramsPerLitre * millilitres / 1000);
    double mark = volumeUncertainty / millilitres;
    return Math.sqrt(mass * mass + mark * mark + volumeRelative * volumeRelative);
  }

  /**
   * The least volume, mL, that meets a target: √((1000·u_m/C)² + u_V²)/√(target² − rel²); infinite
   * if the volume's relative part alone misses it.
   *
   * @param milligramsPerLitre above zero
   * @param target relative standard uncertainty, above zero
   * @throws IllegalArgumentException if a number is not above zero
   */
  public double volumeForTarget(double milligramsPerLitre, double target) {
    Checked.positive(milligramsPerLitre, "concentration in mg/L");
    double room = Checked.positive(target, "target") * target - volumeRelative * volumeRelative;
    double mass = 1000 * residueUncertainty / milligramsPerLitre;
    return room > 0
        ? Math.hypot(mass, volumeUncertainty) / Math.sqrt(room)
        : Double.POSITIVE_INFINITY;
  }
}
