package org.siltbench.labels.sheet;

import java.util.List;

/**
 * What the field sheet says before anybody writes on it.
 *
 * @param batch the batch's code
 * @param batchName its name
 * @param trip the trip, or empty
 * @param method the method with its edition
 * @param wholeBottle true where the whole bottle is filtered (never rinse it with sample)
 * @param lines the filters in order of use
 */
public record FieldSheet(
    String batch,
    String batchName,
    String trip,
    String method,
    boolean wholeBottle,
    List<Line> lines) {

  public FieldSheet {
    lines = List.copyOf(lines);
  }

  /**
   * One filter.
   *
   * @param order place in the order of use, from 1
   * @param id the filter ID
   * @param role the stable role word
   * @param duplicate true for one of a planned pair
   * @param site the planned site, or empty
   * @param planned the planned time as text, or empty
   */
  public record Line(
      int order, String id, String role, boolean duplicate, String site, String planned) {}
}
