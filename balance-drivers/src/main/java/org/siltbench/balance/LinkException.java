package org.siltbench.balance;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.Reasoned;

/** An open link failed; whoever reads from it tries to open it again. */
public final class LinkException extends IOException implements Reasoned {

  private static final long serialVersionUID = 1L;

  private final transient Reason reason;

  public LinkException(Reason reason) {
    this(reason, null);
  }

  /** The same with the failure underneath. */
  public LinkException(Reason reason, @Nullable Throwable cause) {
    super(reason.english(), cause);
    this.reason = reason;
  }

  @Override
  public Reason reason() {
    return reason;
  }
}
