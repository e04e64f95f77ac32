package org.siltbench.balance;

import java.io.IOException;

/** Something outside failed between a balance and this program: a port, a cable, a file. */
public class BalanceException extends IOException {

  private static final long serialVersionUID = 1L;

  private final String next;

  /** What happened and what to do next; nothing was recorded from it. */
  public BalanceException(String what, String next) {
    super(what);
    this.next = next;
  }

  /** The same with the failure underneath. */
  public BalanceException(String what, String next, Throwable cause) {
    super(what, cause);
    this.next = next;
  }

  /** What the person can do now. */
  public String next() {
    return next;
  }
}
