package org.siltbench.calc.result;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.quantity.Mass;

/**
 * The result for one filter.
 *
 * @param input the row it came from
 * @param counted the post-weigh mass that counts
 * @param residue counted less pre-weigh, uncorrected, signed
 * @param blankMg the blank subtracted from this filter's residue, mg; 0 where the method does not
 *     subtract, and for blanks themselves. Concentration = (residue − blank)/volume
 * @param concentration of the sample (of all its filters together); null without a volume
 * @param constant the constant-mass verdict
 * @param limitMgPerL the reporting limit of this sample, mg/L; NaN without a volume
 * @param flags in the order of the list
 * @param further what few results have; null for the rest
 */
public record ResultRow(
    InputRow input,
    Mass counted,
    Mass residue,
    double blankMg,
    @Nullable Concentration concentration,
    ConstantVerdict constant,
    double limitMgPerL,
    Set<Flag> flags,
    @Nullable Further further) {

  /** The column {@code constant}: yes, no or unknown. */
  public String constantWord() {
    return switch (constant.kind()) {
      case CONSTANT -> "yes";
      case DRY_AGAIN -> "no";
      case NOT_TESTED, UNKNOWN -> "unknown";
    };
  }

  /** The name a seed is made from: the sample's, or the filter's own. */
  public String seedName() {
    return input.sample().isEmpty() ? input.filter() : input.sampleKey();
  }

  /** True when someone must look before the result is used. */
  public boolean isStopped() {
    for (Flag flag : flags) {
      if (flag.level() == Flag.Level.STOP) {
        return true;
      }
    }
    return false;
  }
}
