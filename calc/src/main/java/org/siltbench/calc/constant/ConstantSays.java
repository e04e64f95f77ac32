package org.siltbench.calc.constant;

import org.siltbench.calc.reason.ReasonCode;

/** Why a verdict over successive masses is what it is. */
public enum ConstantSays implements ReasonCode {
  NO_TEST("The method asks for no test."),
  WEIGHED_ONCE("Weighed once only: two weighings are needed."),
  REPEAT("A repeat does not count."),
  COARSE("The balance shows steps of {0} mg; the method allows {1} mg."),
  NO_PRE_MASS("The limit depends on the residue: the pre-weigh mass is needed."),
  WITHIN("{0}; the limit is {1} mg."),
  LOSING("{0}, the limit is {1} mg: dry, cool and weigh again."),
  GAINING("{0}, the limit is {1} mg: it may have taken up moisture; dry, cool and weigh again."),
  NO_CHANGE("No change"),
  LOST("Lost {0} mg"),
  GAINED("Gained {0} mg");

  private final String english;

  ConstantSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
