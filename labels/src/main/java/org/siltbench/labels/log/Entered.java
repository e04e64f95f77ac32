package org.siltbench.labels.log;

import java.util.List;

/**
 * A value in the log, with what stood there before it was corrected.
 *
 * @param value what holds now
 * @param struck earlier values, oldest first: printed struck through but readable
 */
public record Entered(String value, List<String> struck) {

  public Entered {
    struck = List.copyOf(struck);
  }

  /** A value that was never corrected. */
  public static Entered of(String value) {
    return new Entered(value, List.of());
  }
}
