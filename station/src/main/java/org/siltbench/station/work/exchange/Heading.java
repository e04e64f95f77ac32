package org.siltbench.station.work.exchange;

/**
 * A column of the file and what it is taken for.
 *
 * @param place its place, from 0
 * @param name its name in the file
 * @param column the column of the receipt table, {@code date} or {@code time} where they stand
 *     apart, or {@code none} where it is left out
 * @param unit the unit of its numbers, or empty
 */
public record Heading(int place, String name, String column, String unit) {

  /** True if its numbers become others in the unit of the receipt table. */
  public boolean converts() {
    return !Units.isPlain(unit);
  }
}
