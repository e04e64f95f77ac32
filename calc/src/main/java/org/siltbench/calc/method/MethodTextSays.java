package org.siltbench.calc.method;

import org.siltbench.calc.reason.ReasonCode;

/** What is wrong in the text of a method, and what should stand there. */
public enum MethodTextSays implements ReasonCode {
  FAULT_AT("line {0}, {1}: {2}, expected {3}"),
  FAULT("{0}: {1}, expected {2}"),
  BOTH("{0}\n{1}"),
  MISSING("missing"),
  FOUND("found \"{0}\""),
  AGAIN("it again"),
  NO_KEY("(no key)"),
  KEY_AND_VALUE("key = value"),
  A_VALUE("a value after the ="),
  ONCE("each key once"),
  KNOWN_KEY("a known key; near: {0}"),
  OR_NONE("{0}, or none"),
  NUMBER("a number from {0} to {1} ({2})"),
  WHOLE_NUMBER("a whole number from {0} to {1}"),
  SPAN("two numbers as \"{0}\" from {1} to {2}"),
  ONE_OF("one of {0}"),
  PERCENT("a number above 0 up to 100 (%)"),
  KEY("letters, digits, dots and hyphens"),
  TITLE("what is measured, in plain words"),
  STANDARD("the published standard it follows, or own"),
  EDITION("the edition of the standard, or none"),
  NOT_BELOW_LEAST("not less than residue_min_mg"),
  ONE_COVERAGE("either coverage_probability_pct or coverage_k, the other none"),
  IGNITION_TIME("a time together with ignite_celsius, or none for both"),
  MINUTES("minutes"),
  DAYS("days"),
  FACTOR("factor"),
  DEGREES_OF_FREEDOM("degrees of freedom, or inf"),
  REPORTING_LIMITS("reporting limits");

  private final String english;

  MethodTextSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
