package org.siltbench.calc.result;

import java.util.List;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.Reasoned;

/** The table cannot be calculated; told before any result is given out. */
public final class InputFaults extends RuntimeException implements Reasoned {

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
    super(all(faults, count).english());
    this.faults = List.copyOf(faults);
    this.count = count;
  }

  private static Reason all(List<RowFault> faults, long count) {
    Reason first =
        faults.stream()
            .map(RowFault::reason)
            .reduce(RowSays.BOTH::with)
            .orElseGet(() -> Reason.plain(""));
    return count > faults.size() ? RowSays.MORE.with(first, count - faults.size()) : first;
  }

  @Override
  public Reason reason() {
    return all(faults, count);
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
