package org.siltbench.balance.link;

import org.siltbench.calc.reason.ReasonCode;

/** Why a text names no balance. */
public enum SpecSays implements ReasonCode {
  UNKNOWN(
      "unknown balance \"{0}\": say serial:PORT, tcp:HOST:PORT, replay:FILE, typed or practice, for"
          + " example serial:/dev/ttyUSB0"),
  NOTHING_BEHIND("after the colon comes {0}"),
  A_PORT("a port, for example serial:/dev/ttyUSB0"),
  A_FILE("a file, for example replay:lines.txt"),
  TCP("tcp needs a host and a port, as in tcp:10.0.0.7:4001"),
  TYPED("typed takes keys only, as in typed?format=heron"),
  PRACTICE("practice takes keys only, as in practice?seed=7"),
  KEY_TWICE("the key {0} is there twice"),
  NO_PAIR("after the ? come KEY=VALUE pairs of at most {0} characters, not: {1}"),
  NO_CODE("\"{0}\" has a % that is not followed by two hex digits; write % as %25"),
  YES_OR_NO("{0} must be yes or no, not \"{1}\""),
  FROM_TO("{0} must be {1} to {2}, not {3}"),
  WHOLE("{0} must be a whole number, not \"{1}\""),
  NUMBER("{0} must be a number, not \"{1}\""),
  ONE_OF("{0} must be {1}; not \"{2}\""),
  TIME("{0} must be a time such as 500ms, 2s or 1m, not \"{1}\""),
  NO_KEY(
      "{0} has no key {1}; the keys are baud, bits, parity, stop (serial, and tcp with rfc2217=yes),"
          + " seed (practice), speed (practice, replay), format, unit, ask, every"),
  EVERY("every must be 20ms to 1h"),
  SPEED("speed must be above 0 and at most 10000"),
  UNIT("unit must be g, mg, kg, ug or ct, not \"{0}\""),
  BAUD("baud must be {0} to {1}"),
  BITS("bits must be 5 to 8, not {0}"),
  ASK_TEXT("ask needs the text to send, for example ask=P%0D%0A"),
  ASKED_ONLY(
      "a balance of format {0} speaks only when asked, and nothing is sent unless you say so: add"
          + " ask= (the format's own text) or ask=TEXT");

  private final String english;

  SpecSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
