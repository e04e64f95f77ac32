package org.siltbench.calc.detection;

/** How a result stands against the limits. */
public enum Standing {
  /** Below the detection limit: reported as "less than", the value kept. */
  NOT_DETECTED,
  /** Detected, but below the reporting limit: an estimate, said to be one. */
  BELOW_REPORTING_LIMIT,
  /** At or above the reporting limit. */
  QUANTIFIED
}
