package org.siltbench.balance;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.Reasoned;

/** Something outside failed between a balance and this program: a port, a cable, a file. */
public class BalanceException extends IOException implements Reasoned {

  private static final long serialVersionUID = 1L;

  private final transient Reason what;
  private final transient Reason next;

  /** What happened and what to do next; nothing was recorded from it. */
  public BalanceException(Reason what, Reason next) {
    this(what, next, null);
  }

  /** The same with the failure underneath. */
  public BalanceException(Reason what, Reason next, @Nullable Throwable cause) {
    super(what.english(), cause);
    this.what = what;
    this.next = next;
  }

  @Override
  public Reason reason() {
    return what;
  }

  /** What the person can do now, in English. */
  public String next() {
    return next.english();
  }

  /** What the person can do now. */
  public Reason wayOut() {
    return next;
  }
}
