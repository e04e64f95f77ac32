package org.siltbench.station.work.exchange;

import java.util.List;
import org.siltbench.station.said.Said;

/**
 * Something that can be read in more than one way. It stands until somebody settles it.
 *
 * @param line the line of the file, or 0 where it concerns the file or a whole column
 * @param column the column's name in the file, or empty
 * @param text what stands there
 * @param what the question
 * @param settle answers that settle it, as {@code KEY=VALUE}; empty where only the file can
 */
public record Doubt(long line, String column, String text, Said what, List<String> settle) {

  /** Copies the answers. */
  public Doubt {
    settle = List.copyOf(settle);
  }
}
