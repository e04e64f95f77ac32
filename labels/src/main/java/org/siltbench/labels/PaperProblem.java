package org.siltbench.labels;

import org.jspecify.annotations.Nullable;

/** A paper could not be made: what happened, what is safe, what to do next. */
public final class PaperProblem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String what;
  private final String safe;
  private final String next;

  public PaperProblem(String what, String safe, String next, @Nullable Throwable cause) {
    super(String.join(" ", what, safe, next).replaceAll("\\s+", " ").strip(), cause);
    this.what = what;
    this.safe = safe;
    this.next = next;
  }

  /** Wrong input: nothing was at stake. */
  public PaperProblem(String what, String next) {
    this(what, "", next, null);
  }

  public String what() {
    return what;
  }

  public String safe() {
    return safe;
  }

  public String next() {
    return next;
  }
}
