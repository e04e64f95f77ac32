package org.siltbench.calc.result;

import org.siltbench.calc.reason.Reason;

/**
 * One thing wrong in the table.
 *
 * @param line the line, from 1; 0 where there is no table
 * @param column the column
 * @param there what stands there; empty where nothing does
 * @param wanted what should
 */
public record RowFault(long line, String column, Reason there, Reason wanted) {

  private static final int MAX_FOUND = 40;

  RowFault(long line, String column, String there, Reason wanted) {
    this(line, column, Reason.plain(there), wanted);
  }

  /** A fault of how a file is written: told in English only, as its reader is a command. */
  RowFault(long line, String column, String there, String wanted) {
    this(line, column, there, Reason.plain(wanted));
  }

  /** What stands there, in English where it is not the table's own. */
  public String found() {
    return there.english();
  }

  /** What should, in English. */
  public String expected() {
    return wanted.english();
  }

  /** The whole of it, to be told in any language. */
  public Reason reason() {
    Reason what = found().isEmpty() ? RowSays.NOTHING_THERE.with() : RowSays.FOUND.with(shown());
    return line == 0
        ? RowSays.FAULT.with(column, what, wanted)
        : RowSays.FAULT_AT.with(line, column, what, wanted);
  }

  private Reason shown() {
    String found = found();
    return found.length() > MAX_FOUND ? Reason.plain(found.substring(0, MAX_FOUND) + "…") : there;
  }

  @Override
  public String toString() {
    return reason().english();
  }
}
