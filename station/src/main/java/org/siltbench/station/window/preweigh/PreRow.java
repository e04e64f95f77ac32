package org.siltbench.station.window.preweigh;

/**
 * A line of the list of what happened, newest first.
 *
 * @param kind what it is
 * @param what the filter or weight
 * @param grams its mass, or empty
 * @param note why, or empty
 */
record PreRow(Kind kind, String what, String grams, String note) {

  /** The kinds, each with a shape, a tone and a word. */
  enum Kind {
    MASS,
    REPEAT,
    CHECK,
    REFUSED
  }
}
