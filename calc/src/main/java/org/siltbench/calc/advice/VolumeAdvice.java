package org.siltbench.calc.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.stats.Checked;

/**
 * How much water to filter for one expected concentration.
 *
 * @param concentration expected, mg/L
 * @param answer whether it can be done
 * @param from least volume that will do, mL
 * @param to most volume that will do, mL
 * @param advised the volume to take, mL: rounded to two digits within the range; where it cannot be
 *     done, the best that can
 * @param residue what that leaves on the filter, mg
 * @param relativeUncertainty what that gives, relative standard uncertainty
 * @param target what was wanted
 */
public record VolumeAdvice(
    double concentration,
    Answer answer,
    double from,
    double to,
    double advised,
    double residue,
    double relativeUncertainty,
    double target) {

  /** Whether it can be done. */
  public enum Answer {
    /** Yes. */
    REACHABLE,
    /** The balance (and blank) is too coarse for so little sediment. */
    NOT_WITH_THIS_BALANCE,
    /** The volume is not known well enough. */
    NOT_WITH_THIS_VOLUME_MEASURE,
    /** The method's least residue needs more water than bottle and filter take. */
    TOO_LITTLE_SEDIMENT,
    /** Even the least volume leaves more than the method allows: several filters, or a split. */
    TOO_MUCH_SEDIMENT
  }

  /**
   * Advice for one concentration: the range of volumes is from max(least residue/C, volume for the
   * target, least volume) to min(most residue/C, most volume); the advice is its geometric middle.
   *
   * @param bench what the bench can do
   * @param milligramsPerLitre expected concentration, above zero
   * @param target relative standard uncertainty wanted, above zero, as 0.05
   * @throws IllegalArgumentException if a number is out of range
   */
  public static VolumeAdvice of(BenchLimits bench, double milligramsPerLitre, double target) {
    double c = Checked.positive(milligramsPerLitre, "expected concentration in mg/L");
    double forTarget = bench.volumeForTarget(c, target);
    double forResidue = 1000 * bench.leastResidue() / c;
    double from = Math.max(bench.leastVolume(), Math.max(forTarget, forResidue));
    double to = Math.min(bench.mostVolume(), 1000 * bench.mostResidue() / c);
    Answer answer = answer(bench, forTarget, forResidue, to, target);
    double best = answer == Answer.REACHABLE ? between(from, to) : nearest(bench, to);
    return new VolumeAdvice(
        c, answer, from, to, best, c * best / 1000, bench.relativeUncertainty(c, best), target);
  }

  private static Answer answer(
      BenchLimits bench, double forTarget, double forResidue, double to, double target) {
    if (to < bench.leastVolume()) {
      return Answer.TOO_MUCH_SEDIMENT;
    }
    if (forTarget <= to) {
      return forResidue <= to ? Answer.REACHABLE : Answer.TOO_LITTLE_SEDIMENT;
    }
    double byVolume = Math.hypot(bench.volumeUncertainty() / to, bench.volumeRelative());
    return byVolume >= target ? Answer.NOT_WITH_THIS_VOLUME_MEASURE : Answer.NOT_WITH_THIS_BALANCE;
  }

  private static double nearest(BenchLimits bench, double to) {
    return Math.max(bench.leastVolume(), to);
  }

  /** The geometric middle to two digits, or unrounded where rounding would leave the range. */
  private static double between(double from, double to) {
    double middle = Math.sqrt(from * to);
    double unit = Math.pow(10, Math.floor(Math.log10(middle)) - 1);
    double rounded = Math.rint(middle / unit) * unit;
    return rounded >= from && rounded <= to ? rounded : middle;
  }

  /** The advice in an English sentence. */
  public String sentence() {
    return reason().english();
  }

  /** The advice, to be told in any language. */
  public Reason reason() {
    AdviceSays code = AdviceSays.valueOf(answer.name());
    return switch (answer) {
      case REACHABLE ->
          told(code, concentration, advised, from, to, residue, percent(relativeUncertainty));
      case NOT_WITH_THIS_BALANCE, NOT_WITH_THIS_VOLUME_MEASURE ->
          told(code, concentration, percent(relativeUncertainty), advised, percent(target));
      case TOO_LITTLE_SEDIMENT, TOO_MUCH_SEDIMENT -> told(code, concentration, advised, residue);
    };
  }

  private static double percent(double relative) {
    return 100 * relative;
  }

  private static Reason told(AdviceSays code, double... numbers) {
    Object[] words = new Object[numbers.length];
    for (int i = 0; i < numbers.length; i++) {
      words[i] = plain(numbers[i]);
    }
    return code.with(words);
  }

  private static String plain(double x) {
    return new BigDecimal(x).round(new MathContext(2)).stripTrailingZeros().toPlainString();
  }
}
