package org.siltbench.labels.draw;

/**
 * A column of a table.
 *
 * @param head its heading
 * @param share its part of the width, relative to the others
 * @param align where its content stands
 */
public record Column(String head, double share, Align align) {

  /** Where a cell's content stands. */
  public enum Align {
    LEFT,
    RIGHT,
    CENTRE
  }

  public static Column left(String head, double share) {
    return new Column(head, share, Align.LEFT);
  }

  public static Column right(String head, double share) {
    return new Column(head, share, Align.RIGHT);
  }

  public static Column centre(String head, double share) {
    return new Column(head, share, Align.CENTRE);
  }
}
