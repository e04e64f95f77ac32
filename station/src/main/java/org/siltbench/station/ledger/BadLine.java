package org.siltbench.station.ledger;

import org.jspecify.annotations.Nullable;

/** A line that is not a whole entry; the message says why. */
final class BadLine extends Exception {

  private static final long serialVersionUID = 1L;

  private final boolean newer;

  private BadLine(String message, boolean newer, @Nullable Throwable cause) {
    super(message, cause);
    this.newer = newer;
  }

  static BadLine damaged(String why) {
    return new BadLine(why, false, null);
  }

  static BadLine damaged(String why, Throwable cause) {
    return new BadLine(why + ": " + cause.getMessage(), false, cause);
  }

  static BadLine newer(long version) {
    return new BadLine("it has form " + version + ", made by a newer version", true, null);
  }

  /** Whole, but in a form that this version does not know. */
  boolean newer() {
    return newer;
  }
}
