package org.siltbench.calc.method;

import org.siltbench.calc.reason.ReasonCode;

/** What is measured; results of different parameters are never pooled. */
public enum Parameter implements ReasonCode {
  TOTAL_SUSPENDED_SOLIDS("total-suspended-solids", "Total suspended solids"),
  SUSPENDED_SEDIMENT_CONCENTRATION(
      "suspended-sediment-concentration", "Suspended-sediment concentration"),
  VOLATILE_SUSPENDED_SOLIDS("volatile-suspended-solids", "Volatile suspended solids");

  private final String word;
  private final String title;

  Parameter(String word, String title) {
    this.word = word;
    this.title = title;
  }

  /** The stable word for files. */
  public String word() {
    return word;
  }

  @Override
  public String english() {
    return title;
  }

  /** The name for papers. */
  public String title() {
    return title;
  }
}
