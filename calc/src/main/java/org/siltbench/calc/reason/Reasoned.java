package org.siltbench.calc.reason;

/** An exception whose message has a code. */
public interface Reasoned {

  /** Why it was thrown. */
  Reason reason();
}
