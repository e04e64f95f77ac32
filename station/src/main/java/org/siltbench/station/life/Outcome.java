package org.siltbench.station.life;

/** What the table answers: the next status, or why not and what to do instead. */
public sealed interface Outcome {

  /** Allowed; the filter then has this status. */
  record Goes(Status to) implements Outcome {}

  /** Not allowed. */
  record Refuses(String why, String wayOut) implements Outcome {}
}
