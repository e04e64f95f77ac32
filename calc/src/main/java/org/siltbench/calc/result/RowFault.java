package org.siltbench.calc.result;

/**
 * One thing wrong in the table.
 *
 * @param line the line, from 1; 0 where there is no table
 * @param column the column
 * @param found what stands there; empty where nothing does
 * @param expected what should
 */
public record RowFault(long line, String column, String found, String expected) {

  private static final int MAX_FOUND = 40;

  @Override
  public String toString() {
    String shown = found.length() > MAX_FOUND ? found.substring(0, MAX_FOUND) + "…" : found;
    String what = found.isEmpty() ? "nothing there" : "found \"" + shown + '"';
    return (line == 0 ? "" : "line " + line + ", ")
        + "column "
        + column
        + ": "
        + what
        + ", expected "
        + expected;
  }
}
