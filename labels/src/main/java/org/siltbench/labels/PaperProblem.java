package org.siltbench.labels;

import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.calc.reason.Reasoned;

/** A paper could not be made: what happened, what is safe, what to do next. */
public final class PaperProblem extends RuntimeException implements Reasoned {

  private static final long serialVersionUID = 1L;

  private final transient Reason what;
  private final transient Reason safe;
  private final transient Reason next;

  public PaperProblem(Reason what, Reason safe, Reason next, @Nullable Throwable cause) {
    super(
        String.join(" ", what.english(), safe.english(), next.english())
            .replaceAll("\\s+", " ")
            .strip(),
        cause);
    this.what = what;
    this.safe = safe;
    this.next = next;
  }

  /** Wrong input: nothing was at stake. */
  public PaperProblem(Reason what, Reason next) {
    this(what, PapersSay.NOTHING.with(), next, null);
  }

  @Override
  public Reason reason() {
    return what;
  }

  /** What happened, in English. */
  public String what() {
    return what.english();
  }

  /** What is safe, in English. */
  public String safe() {
    return safe.english();
  }

  /** What to do next, in English. */
  public String next() {
    return next.english();
  }

  /** What to do next. */
  public Reason wayOut() {
    return next;
  }
}
