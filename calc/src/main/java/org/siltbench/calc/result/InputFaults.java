package org.siltbench.calc.result;

import java.util.List;
import java.util.stream.Collectors;

/** The table cannot be calculated; told before any result is given out. */
public final class InputFaults extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<RowFault> faults;
  private final long count;

  /**
   * Faults of a table.
   *
   * @param faults the first ones, in the order of lines
   * @param count how many there are in all
   */
  public InputFaults(List<RowFault> faults, long count) {
    super(text(faults, count));
    this.faults = List.copyOf(faults);
    this.count = count;
  }

  private static String text(List<RowFault> faults, long count) {
    String first = faults.stream().map(RowFault::toString).collect(Collectors.joining("\n"));
    return count > faults.size() ? first + "\n… and " + (count - faults.size()) + " more" : first;
  }

  /** The first faults, in the order of lines. */
  public List<RowFault> faults() {
    return faults;
  }

  /** How many there are in all. */
  public long count() {
    return count;
  }
}
