package org.siltbench.station.window.look;

import java.util.Locale;

/** How good news is; a colour, always with a shape and a word beside it. */
public enum Tone {
  PLAIN,
  GOOD,
  WAIT,
  WARN,
  BAD;

  /** Its style class. */
  public String style() {
    return "tone-" + name().toLowerCase(Locale.ROOT);
  }
}
