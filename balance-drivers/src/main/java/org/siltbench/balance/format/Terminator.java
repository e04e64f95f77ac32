package org.siltbench.balance.format;

import java.nio.charset.StandardCharsets;
import org.siltbench.calc.reason.Unfit;

/**
 * What ends a line.
 *
 * @param text the exact characters, or empty for "a CR or a LF, whichever comes"
 */
public record Terminator(String text) {

  /** A carriage return or a line feed, in any order and number; empty lines are skipped. */
  public static final Terminator ANY = new Terminator("");

  /** Carriage return and line feed. */
  public static final Terminator CR_LF = new Terminator("\r\n");

  private static final int LONGEST = 8;

  /** Refuses an end longer than eight characters. */
  public Terminator {
    if (text.length() > LONGEST) {
      throw new Unfit(FormatFileSays.END_LENGTH, LONGEST);
    }
  }

  byte[] bytes() {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
