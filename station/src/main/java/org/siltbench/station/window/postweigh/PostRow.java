package org.siltbench.station.window.postweigh;

/**
 * A line of the list of what happened, newest first.
 *
 * @param kind what it is
 * @param what the filter or weight
 * @param grams its mass, or empty
 * @param note the change, or why it was refused
 */
record PostRow(Kind kind, String what, String grams, String note) {

  /** The kinds, each with a shape, a tone and a word. */
  enum Kind {
    CONSTANT,
    DRY_AGAIN,
    NOT_TESTED,
    UNKNOWN,
    CHECK,
    REFUSED
  }
}
