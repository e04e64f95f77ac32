package org.siltbench.calc.method;

import java.util.List;
import java.util.stream.Collectors;

/** A method's text cannot be used; all faults are told at once. */
public final class MethodException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<MethodFault> faults;

  MethodException(List<MethodFault> faults) {
    super(faults.stream().map(MethodFault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** The faults in the order of lines. */
  List<MethodFault> faults() {
    return faults;
  }
}
