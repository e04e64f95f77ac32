package org.siltbench.station.window.strip;

import org.siltbench.station.said.Words;

/**
 * What the strip says of the balance at one moment.
 *
 * @param state the state, for its word, its shape and its colour
 * @param digits the number shown, or empty
 * @param unit its unit
 * @param prompt what to do, or empty: a filter ID to place, "take it off"
 * @param why why it is so, or empty
 */
record Face(State state, String digits, String unit, Prompt prompt, Words why) {

  /** The states; the word of each is in the texts under {@code state.NAME}. */
  enum State {
    NO_BALANCE,
    AWAY,
    SILENT,
    UNREADABLE,
    UNSURE,
    READY,
    REZERO,
    SETTLING,
    HOLDING,
    STABLE,
    RECORDED,
    REFUSED,
    MOISTURE,
    OUT_OF_RANGE
  }

  /**
   * What the person is asked to do.
   *
   * @param kind to place, to take off, or nothing
   * @param what what to place
   */
  record Prompt(Kind kind, Words what) {
    enum Kind {
      NONE,
      PLACE,
      TAKE_OFF
    }

    static final Prompt NONE = new Prompt(Kind.NONE, Words.none());
  }

  static final Face START = new Face(State.NO_BALANCE, "", "", Prompt.NONE, Words.none());

  Face in(State other, Words reason) {
    return new Face(other, digits, unit, prompt, reason);
  }

  Face showing(String number, String inUnit) {
    return new Face(state, number, inUnit, prompt, why);
  }

  Face asking(Prompt other) {
    return new Face(state, digits, unit, other, why);
  }
}
