package org.siltbench.calc.reason;

/** A value that cannot be taken, with a reason that can be told in any language. */
public final class Unfit extends IllegalArgumentException implements Reasoned {

  private static final long serialVersionUID = 1L;

  private final transient Reason reason;

  /** A value that cannot be taken. */
  public Unfit(ReasonCode code, Object... gaps) {
    this(code.with(gaps), null);
  }

  /** The same with the failure underneath. */
  public Unfit(Reason reason, @org.jspecify.annotations.Nullable Throwable cause) {
    super(reason.english(), cause);
    this.reason = reason;
  }

  @Override
  public Reason reason() {
    return reason;
  }
}
