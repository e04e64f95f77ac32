package org.siltbench.calc.method;

import org.siltbench.calc.quantity.Mass;

/**
 * The balance under the method.
 *
 * @param checkLimit the largest error of the balance at a check weight
 * @param checkEvery weighings after which a bracketing check is due
 * @param missingCheck what a missing or failed check does
 * @param moistureAllowance the largest moisture a filter may take up while it is weighed
 */
public record BalanceRule(
    Mass checkLimit, int checkEvery, MissingCheck missingCheck, Mass moistureAllowance) {

  /** What a missing or failed check does. */
  public enum MissingCheck {
    WARN("warn"),
    STOP("stop");

    private final String word;

    MissingCheck(String word) {
      this.word = word;
    }

    /** The stable word for files. */
    public String word() {
      return word;
    }
  }
}
