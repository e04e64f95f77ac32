package org.siltbench.calc.method;

import java.util.List;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.Reasoned;

/** A method's text cannot be used; all faults are told at once. */
public final class MethodException extends RuntimeException implements Reasoned {

  private static final long serialVersionUID = 1L;

  private final transient List<MethodFault> faults;

  MethodException(List<MethodFault> faults) {
    super(all(faults).english());
    this.faults = List.copyOf(faults);
  }

  private static Reason all(List<MethodFault> faults) {
    return faults.stream()
        .map(MethodFault::reason)
        .reduce(MethodTextSays.BOTH::with)
        .orElseGet(() -> Reason.plain(""));
  }

  /** The faults in the order of lines. */
  List<MethodFault> faults() {
    return faults;
  }

  @Override
  public Reason reason() {
    return all(faults);
  }
}
