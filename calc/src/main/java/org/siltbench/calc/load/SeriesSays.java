package org.siltbench.calc.load;

import org.siltbench.calc.reason.ReasonCode;

/** Why values over time make no series or no load. */
public enum SeriesSays implements ReasonCode {
  LONGEST_STEP("longest step must be above zero: {0}"),
  TWO_VALUES("two values at {0}"),
  END_NOT_AFTER("the end {0} is not after the begin {1}");

  private final String english;

  SeriesSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
