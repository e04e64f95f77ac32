package org.siltbench.balance.format;

/** A line format file that cannot be read; the message says which line and what was expected. */
public final class FormatException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  FormatException(int line, String what) {
    super("line " + line + ": " + what);
  }

  FormatException(int line, IllegalArgumentException cause) {
    super("line " + line + ": " + cause.getMessage(), cause);
  }
}
