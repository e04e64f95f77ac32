package org.siltbench.balance.stable;

import org.siltbench.calc.reason.ReasonCode;

/** Why the balance shows no mass. */
public enum PanSays implements ReasonCode {
  OVER("over the balance's range"),
  UNDER("under the balance's range"),
  FAULT("the balance reports a fault"),
  MASS("a mass"),
  NO_MASS("the balance shows no mass");

  private final String english;

  PanSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
