package org.siltbench.calc.advice;

import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.stats.Checked;

/**
 * Volumes for both ends of a storm.
 *
 * @param clearest advice at the lowest concentration expected
 * @param dirtiest advice at the highest
 * @param oneVolume a volume that serves both ends, mL, or NaN if none does
 */
public record StormAdvice(VolumeAdvice clearest, VolumeAdvice dirtiest, double oneVolume) {

  /**
   * Advice at both ends.
   *
   * @param bench what the bench can do
   * @param lowest concentration expected, mg/L, above zero
   * @param highest concentration expected, mg/L, not below the lowest
   * @param target relative standard uncertainty wanted, above zero
   * @throws IllegalArgumentException if a number is out of range
   */
  public static StormAdvice of(BenchLimits bench, double lowest, double highest, double target) {
    Checked.positive(lowest, "lowest concentration in mg/L");
    Checked.notNegative(highest - lowest, "highest concentration less the lowest");
    VolumeAdvice clear = VolumeAdvice.of(bench, lowest, target);
    VolumeAdvice dirty = VolumeAdvice.of(bench, highest, target);
    double from = Math.max(clear.from(), dirty.from());
    double to = Math.min(clear.to(), dirty.to());
    return new StormAdvice(clear, dirty, from <= to ? Math.sqrt(from * to) : Double.NaN);
  }

  /** The advice in English words. */
  public String sentence() {
    return reason().english();
  }

  /** The advice, to be told in any language. */
  public Reason reason() {
    AdviceSays code = Double.isNaN(oneVolume) ? AdviceSays.BOTH_APART : AdviceSays.BOTH;
    return code.with(clearest.reason(), dirtiest.reason());
  }
}
