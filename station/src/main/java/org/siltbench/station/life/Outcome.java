package org.siltbench.station.life;

import org.siltbench.station.said.Code;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** What the table answers: the next status, or why not and what to do instead. */
public sealed interface Outcome {

  /** Allowed; the filter then has this status. */
  record Goes(Status to) implements Outcome {}

  /** Not allowed. */
  record Refuses(Code reason) implements Outcome {

    /** Why, in any language. */
    public Words words() {
      return language -> Said.of(reason).part("what", language);
    }

    /** The way out, in any language. */
    public Words wordsOut() {
      return language -> Said.of(reason).part("next", language);
    }

    /** Why. */
    public String why() {
      return words().english();
    }

    /** What to do instead. */
    public String wayOut() {
      return wordsOut().english();
    }
  }
}
