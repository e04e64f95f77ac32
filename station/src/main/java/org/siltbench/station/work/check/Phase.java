package org.siltbench.station.work.check;

import org.siltbench.station.Problem;

/** When a check is made. */
public enum Phase {
  OPENING("opening"),
  BRACKET("bracket"),
  CLOSING("closing");

  private final String code;

  Phase(String code) {
    this.code = code;
  }

  /** The stable word. */
  public String code() {
    return code;
  }

  /** Reads a stable word. */
  public static Phase of(String word) {
    for (Phase phase : values()) {
      if (phase.code.equals(word)) {
        return phase;
      }
    }
    throw new Problem.WrongUse(CheckSays.NO_PHASE, word);
  }
}
