package org.siltbench.calc.stats;

import org.siltbench.calc.reason.ReasonCode;

/** Why no line can be laid through points. */
public enum LineSays implements ReasonCode {
  NOT_AS_MANY("{0} x but {1} y"),
  ALL_EQUAL("all x are equal ({0}): no line");

  private final String english;

  LineSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
