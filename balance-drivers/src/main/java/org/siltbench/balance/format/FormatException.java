package org.siltbench.balance.format;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.Reasoned;

/** A line format file that cannot be read; the message says which line and what was expected. */
public final class FormatException extends IllegalArgumentException implements Reasoned {

  private static final long serialVersionUID = 1L;

  private final transient Reason reason;

  FormatException(int line, Reason what) {
    this(FormatSays.AT_LINE.with(line, what), null);
  }

  FormatException(int line, IllegalArgumentException cause) {
    this(FormatSays.AT_LINE.with(line, Reason.of(cause)), cause);
  }

  private FormatException(Reason reason, @Nullable Throwable cause) {
    super(reason.english(), cause);
    this.reason = reason;
  }

  @Override
  public Reason reason() {
    return reason;
  }
}
