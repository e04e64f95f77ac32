package org.siltbench.balance.practice;

import java.time.Duration;
import org.siltbench.calc.quantity.Mass;

/**
 * Something to lay on the practice pan.
 *
 * @param mass its mass when it left the desiccator
 * @param moistureMgPerMin how fast it takes up water at first, mg/min; 0 for a dry weight
 * @param moistureMinutes time constant of the uptake, min
 * @param outFor how long it has been out of the desiccator already
 * @param warmMg how much too light it seems when laid on, because it is warm, mg
 * @param warmSeconds time constant of its cooling, s
 * @param staticMg pull of a charge it carries, mg
 */
public record Load(
    Mass mass,
    double moistureMgPerMin,
    double moistureMinutes,
    Duration outFor,
    double warmMg,
    double warmSeconds,
    double staticMg) {

  /** A load that changes nothing by itself: a check weight, a cool dry filter. */
  public static Load of(Mass mass) {
    return new Load(mass, 0, 10, Duration.ZERO, 0, 60, 0);
  }

  /** The same load taking up water. */
  public Load moist(double mgPerMin, double minutes, Duration already) {
    return new Load(mass, mgPerMin, minutes, already, warmMg, warmSeconds, staticMg);
  }

  /** The same load still warm. */
  public Load warm(double mg, double seconds) {
    return new Load(mass, moistureMgPerMin, moistureMinutes, outFor, mg, seconds, staticMg);
  }

  /** The same load with a static charge. */
  public Load charged(double mg) {
    return new Load(mass, moistureMgPerMin, moistureMinutes, outFor, warmMg, warmSeconds, mg);
  }
}
