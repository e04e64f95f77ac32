package org.siltbench.calc.result;

import org.siltbench.calc.reason.ReasonCode;

/** What makes a row impossible to calculate, and what should stand there. */
public enum RowSays implements ReasonCode {
  FAULT_AT("line {0}, column {1}: {2}, expected {3}"),
  FAULT("column {0}: {1}, expected {2}"),
  BOTH("{0}\n{1}"),
  MORE("{0}\n… and {1} more"),
  NOTHING_THERE("nothing there"),
  FOUND("found \"{0}\""),
  FILTER_NAME("the name of the filter"),
  PRE_MASS("the pre-weigh mass in g, as 0.11234"),
  POST_MASS("a post-weigh mass in g, here or in post1_g, post2_g, …"),
  VOLUME("a volume in mL from {0} to {1}, or nothing where it is not known"),
  VOLUME_U("a standard uncertainty in mL, zero or above and below the volume"),
  A_VOLUME("a volume"),
  NOTHING_FOR_SAND("nothing for sand: the volume of the sample stands with its fines"),
  VOLUME_AND_MIXTURE("both"),
  VOLUME_OR_MIXTURE("either volume_ml or mixture_g, not both"),
  TOO_LITTLE("too little"),
  MIXTURE("the mass of water and sediment in g, above that of the sediment"),
  NO_MATERIAL("no material"),
  NOT_BURNING("a filter that does not burn; do not ignite it"),
  MUFFLED(
      "a filter heated to 500 °C at least before its pre-weigh, else its own loss counts as volatile"),
  FILTER_ONCE("each filter once; it is on line {0} too");

  private final String english;

  RowSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
