package org.siltbench.station.people;

/** What a person may do; each includes the one before. */
public enum Right {
  READ("read"),
  WEIGH("weigh"),
  SUPERVISE("supervise");

  private final String code;

  Right(String code) {
    this.code = code;
  }

  /** The stable word on disk and for scripts. */
  public String code() {
    return code;
  }

  /** True if this includes the other. */
  public boolean includes(Right other) {
    return compareTo(other) >= 0;
  }

  /** Reads a stable word. */
  public static Right of(String code) {
    for (Right right : values()) {
      if (right.code.equals(code)) {
        return right;
      }
    }
    throw new IllegalArgumentException("a right is read, weigh or supervise, not " + code);
  }
}
