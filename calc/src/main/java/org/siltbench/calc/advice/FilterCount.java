package org.siltbench.calc.advice;

/**
 * How many filters to prepare, by role.
 *
 * @param samples filters for samples
 * @param duplicates filters for duplicates
 * @param fieldBlanks field blanks
 * @param tripBlanks trip blanks
 * @param methodBlanks method blanks, in the lab
 * @param controlFilters control filters, in the lab
 * @param spares spares
 */
public record FilterCount(
    int samples,
    int duplicates,
    int fieldBlanks,
    int tripBlanks,
    int methodBlanks,
    int controlFilters,
    int spares) {

  /** Filters that leave the lab. */
  public int out() {
    return samples + duplicates + fieldBlanks + tripBlanks + spares;
  }

  /** All filters. */
  public int total() {
    return out() + methodBlanks + controlFilters;
  }
}
