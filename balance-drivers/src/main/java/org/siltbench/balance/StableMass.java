package org.siltbench.balance;

import java.util.List;
import org.siltbench.calc.quantity.Mass;

/**
 * A mass the stability detector accepted.
 *
 * @param mass the mass shown by the balance that stands for the accepted stretch, exact
 * @param digits the same, with the displayed digits in the displayed unit
 * @param unit the displayed unit
 * @param resolution the balance's smallest displayed step, seen or configured
 * @param standardUncertaintyMg standard uncertainty of the settled mean from this stretch alone, mg
 * @param driftMgPerMin slope over the accepted stretch, mg/min
 * @param moistureMg allowance for moisture taken up since the desiccator (rate x time), mg; zero if
 *     none
 * @param evidence the readings of the accepted stretch, oldest first
 */
public record StableMass(
    Mass mass,
    String digits,
    String unit,
    Mass resolution,
    double standardUncertaintyMg,
    double driftMgPerMin,
    double moistureMg,
    List<Reading> evidence) {

  /** Copies the evidence. */
  public StableMass {
    evidence = List.copyOf(evidence);
    if (!(standardUncertaintyMg >= 0)) {
      throw new IllegalArgumentException("uncertainty, mg: " + standardUncertaintyMg);
    }
  }
}
