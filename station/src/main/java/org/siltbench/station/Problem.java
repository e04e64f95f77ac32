package org.siltbench.station;

import org.jspecify.annotations.Nullable;

/**
 * Something the person must know: what happened, what is safe, what to do next. Each part is a
 * short sentence.
 */
public abstract sealed class Problem extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String what;
  private final String safe;
  private final String next;

  private Problem(String what, String safe, String next, @Nullable Throwable cause) {
    super(join(what, safe, next), cause);
    this.what = what;
    this.safe = safe;
    this.next = next;
  }

  private static String join(String what, String safe, String next) {
    StringBuilder text = new StringBuilder(what);
    for (String part : new String[] {safe, next}) {
      if (!part.isEmpty()) {
        text.append(' ').append(part);
      }
    }
    return text.toString();
  }

  /** What happened. */
  public final String what() {
    return what;
  }

  /** What is safe; may be empty where nothing was at stake. */
  public final String safe() {
    return safe;
  }

  /** What to do next. */
  public final String next() {
    return next;
  }

  /** The exit status of a command that ends with this problem. */
  public abstract int exitStatus();

  /** Refused by a rule of the job: exit 1. */
  public static final class Refused extends Problem {
    private static final long serialVersionUID = 1L;

    public Refused(String what, String safe, String next) {
      super(what, safe, next, null);
    }

    @Override
    public int exitStatus() {
      return 1;
    }
  }

  /** The words or the table given to the bench make no sense: exit 2. */
  public static final class WrongUse extends Problem {
    private static final long serialVersionUID = 1L;

    public WrongUse(String what, String next) {
      super(what, "", next, null);
    }

    @Override
    public int exitStatus() {
      return 2;
    }
  }

  /** A cable, a disk, a printer, a server failed: exit 3. */
  public static final class Outside extends Problem {
    private static final long serialVersionUID = 1L;

    public Outside(String what, String safe, String next, @Nullable Throwable cause) {
      super(what, safe, next, cause);
    }

    @Override
    public int exitStatus() {
      return 3;
    }
  }
}
