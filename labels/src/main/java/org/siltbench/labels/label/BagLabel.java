package org.siltbench.labels.label;

/**
 * What one bag label says.
 *
 * @param code the bag-code text, letters and digits
 * @param id the filter ID, without spaces: the label groups it
 * @param mass the pre-weigh mass with the displayed digits and the unit, for example "0.12874 g"
 * @param revision 1 for the first label of this filter
 * @param role the stable role word, for example "sample" or "field-blank"
 * @param duplicate true where the filter is one of a planned pair
 * @param batch the batch's code or name, printed small
 * @param practice true in a practice lab
 */
public record BagLabel(
    String code,
    String id,
    String mass,
    int revision,
    String role,
    boolean duplicate,
    String batch,
    boolean practice) {

  public BagLabel {
    if (code.isEmpty() || id.isEmpty() || mass.isEmpty() || revision < 1) {
      throw new IllegalArgumentException("a bag label needs code, ID, mass and a revision from 1");
    }
  }
}
