package org.siltbench.balance.format;

import org.siltbench.calc.reason.Unfit;

/**
 * Text between quotes with escapes, one character a byte: {@code \r \n \t \\ \' \xHH}. Used by line
 * formats and captures alike.
 */
public final class Quoted {

  private Quoted() {}

  /** Puts quotes and escapes. */
  public static String quote(String text) {
    StringBuilder out = new StringBuilder(text.length() + 2).append('\'');
    for (int i = 0; i < text.length(); i++) {
      escape(text.charAt(i), out);
    }
    return out.append('\'').toString();
  }

  private static void escape(char c, StringBuilder out) {
    switch (c) {
      case '\r' -> out.append("\\r");
      case '\n' -> out.append("\\n");
      case '\t' -> out.append("\\t");
      case '\\' -> out.append("\\\\");
      case '\'' -> out.append("\\'");
      default -> {
        if (c >= ' ' && c < 0x7F) {
          out.append(c);
        } else if (c <= 0xFF) {
          out.append("\\x").append(Character.forDigit(c >> 4, 16));
          out.append(Character.forDigit(c & 0xF, 16));
        } else {
          throw new Unfit(FormatFileSays.NO_BYTE, c);
        }
      }
    }
  }

  /**
   * Takes quotes and escapes away.
   *
   * @throws IllegalArgumentException if the text is not quoted as it should be
   */
  public static String unquote(String quoted) {
    int end = end(quoted, 0);
    if (end != quoted.length()) {
      throw new Unfit(FormatFileSays.AFTER_QUOTE, quoted);
    }
    return inner(quoted, 1, end - 1);
  }

  /** The place just after the closing quote of the quoted text that begins at {@code from}. */
  static int end(String text, int from) {
    if (from >= text.length() || text.charAt(from) != '\'') {
      throw new Unfit(FormatFileSays.QUOTES, text);
    }
    for (int i = from + 1; i < text.length(); i++) {
      if (text.charAt(i) == '\\') {
        i++;
      } else if (text.charAt(i) == '\'') {
        return i + 1;
      }
    }
    throw new Unfit(FormatFileSays.QUOTE_OPEN, text);
  }

  private static String inner(String text, int from, int to) {
    StringBuilder out = new StringBuilder(to - from);
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c > 0xFF) {
        throw new Unfit(FormatFileSays.NO_BYTE, c);
      }
      if (c != '\\') {
        out.append(c);
      } else if (++i < to && text.charAt(i) == 'x') {
        out.append(hex(text, i + 1, to));
        i += 2;
      } else {
        out.append(escaped(i < to ? text.charAt(i) : ' '));
      }
    }
    return out.toString();
  }

  private static char hex(String text, int from, int to) {
    if (from + 2 <= to) {
      int high = Character.digit(text.charAt(from), 16);
      int low = Character.digit(text.charAt(from + 1), 16);
      if (high >= 0 && low >= 0) {
        return (char) (16 * high + low);
      }
    }
    throw new Unfit(FormatFileSays.HEX, text);
  }

  private static char escaped(char c) {
    return switch (c) {
      case 'r' -> '\r';
      case 'n' -> '\n';
      case 't' -> '\t';
      case '\\', '\'' -> c;
      default -> throw new Unfit(FormatFileSays.ESCAPE, c);
    };
  }
}
