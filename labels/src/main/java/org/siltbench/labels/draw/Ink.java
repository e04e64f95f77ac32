package org.siltbench.labels.draw;

/** Black first; greys only where nothing hangs on them. */
public enum Ink {
  BLACK(0),
  /** Captions: dark enough for a worn printer. */
  GREY(0.32f),
  /** Grid lines inside a table. */
  RULE(0.62f),
  /** A tint behind rows. */
  TINT(0.945f),
  /** The practice mark under a page. */
  GHOST(0.86f),
  WHITE(1);

  private final float level;

  Ink(float level) {
    this.level = level;
  }

  float level() {
    return level;
  }
}
