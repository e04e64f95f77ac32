package org.siltbench.station.table;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from running a cell: a text that starts with a sign of a formula gets an
 * apostrophe before it. Plain numbers are left alone.
 */
public final class SafeCells {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

  private SafeCells() {}

  /** The cell as it may be written. */
  public static String of(String cell) {
    if (cell.isEmpty() || !startsFormula(cell) || NUMBER.matcher(cell).matches()) {
      return cell;
    }
    return '\'' + cell;
  }

  private static boolean startsFormula(String cell) {
    int at = 0;
    while (at < cell.length() && cell.charAt(at) == ' ') {
      at++;
    }
    return at < cell.length()
        && "=+-@\t\r\n|%\uFF1D\uFF0B\uFF0D\uFF20".indexOf(cell.charAt(at)) >= 0;
  }
}
