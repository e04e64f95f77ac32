package org.siltbench.station.ledger;

import org.jspecify.annotations.Nullable;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** A line that is not a whole entry; the message says why. */
final class BadLine extends Exception {

  private static final long serialVersionUID = 1L;

  private final boolean newer;
  private final transient Said why;

  private BadLine(Said why, boolean newer, @Nullable Throwable cause) {
    super(why.english(), cause);
    this.why = why;
    this.newer = newer;
  }

  static BadLine damaged(LedgerSays why, Object... gaps) {
    return new BadLine(Said.of(why, gaps), false, null);
  }

  static BadLine damaged(LedgerSays why, Throwable cause) {
    return new BadLine(Said.of(why, String.valueOf(cause.getMessage())), false, cause);
  }

  static BadLine newer(long version) {
    return new BadLine(Said.of(LedgerSays.BAD_NEWER, version), true, null);
  }

  /** Why, in any language. */
  Words why() {
    return why;
  }

  /** Whole, but in a form that this version does not know. */
  boolean newer() {
    return newer;
  }
}
