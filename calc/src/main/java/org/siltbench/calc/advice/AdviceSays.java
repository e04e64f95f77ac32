package org.siltbench.calc.advice;

import org.siltbench.calc.reason.ReasonCode;

/** Advice on volumes, as sentences. */
public enum AdviceSays implements ReasonCode {
  REACHABLE(
      "At {0} mg/L filter about {1} mL ({2} to {3} mL will do): {4} mg on the filter, ± {5} %."),
  NOT_WITH_THIS_BALANCE(
      "Not reachable with this balance: at {0} mg/L the best is ± {1} % with {2} mL, and ± {3} % was"
          + " asked for. Take a finer balance or accept more."),
  NOT_WITH_THIS_VOLUME_MEASURE(
      "Not reachable with this volume measure: at {0} mg/L the best is ± {1} % with {2} mL, and ± {3}"
          + " % was asked for. Measure the volume better, as by mass."),
  TOO_LITTLE_SEDIMENT(
      "At {0} mg/L even {1} mL leaves only {2} mg, less than the method accepts. Report it as below"
          + " the limit, or filter more water."),
  TOO_MUCH_SEDIMENT(
      "At {0} mg/L even {1} mL leaves {2} mg, more than the method accepts. Use several filters for"
          + " one sample, or split it."),
  BOTH("{0} {1}"),
  BOTH_APART("{0} {1} No one volume serves both ends: filter less as the water darkens.");

  private final String english;

  AdviceSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
