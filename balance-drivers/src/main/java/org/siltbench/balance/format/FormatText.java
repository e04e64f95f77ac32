package org.siltbench.balance.format;

import java.util.List;

/**
 * The text file of a line format: a first line, then {@code key: value} lines. Described in
 * docs/line-format.md.
 */
public final class FormatText {

  static final String FIRST_LINE = "siltbench line format 1";

  private static final int MAX_LINES = 500;

  private FormatText() {}

  /**
   * Reads a format.
   *
   * @throws FormatException naming the line and what was expected there
   */
  public static LineFormat parse(String text) {
    List<String> lines = text.lines().limit(MAX_LINES + 1L).toList();
    if (lines.isEmpty() || !lines.get(0).strip().equals(FIRST_LINE)) {
      throw new FormatException(1, FormatSays.FIRST_LINE.with(FIRST_LINE));
    }
    if (lines.size() > MAX_LINES) {
      throw new FormatException(MAX_LINES, FormatSays.TOO_MANY_LINES.with());
    }
    FormatKeys keys = new FormatKeys();
    for (int i = 1; i < lines.size(); i++) {
      line(keys, i + 1, lines.get(i).strip());
    }
    return finish(keys, lines.size());
  }

  private static void line(FormatKeys keys, int number, String line) {
    if (line.isEmpty() || line.startsWith("#")) {
      return;
    }
    try {
      keys.take(line);
    } catch (IllegalArgumentException e) {
      throw new FormatException(number, e);
    }
  }

  private static LineFormat finish(FormatKeys keys, int last) {
    try {
      return keys.toFormat();
    } catch (IllegalArgumentException e) {
      throw new FormatException(last, e);
    }
  }

  /** Writes a format as {@link #parse} reads it. */
  public static String print(LineFormat format) {
    return FormatPrinter.print(format);
  }
}
