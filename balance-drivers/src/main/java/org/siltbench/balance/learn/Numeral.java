package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of digits in a line that may be the number: from, to, and whether it has a decimal mark.
 */
record Numeral(int from, int to, boolean marked) {

  private static final String MARKS = ".,";

  /** True if it has no decimal mark and hangs on a letter, as in a name. */
  boolean inName(String line) {
    return !marked && from > 0 && Character.isLetter(line.charAt(from - 1));
  }

  /** All numerals of a line, left to right. */
  static List<Numeral> in(String line) {
    List<Numeral> out = new ArrayList<>();
    int at = 0;
    while (at < line.length()) {
      if (!isDigit(line.charAt(at))) {
        at++;
        continue;
      }
      int end = at;
      while (end < line.length() && isPart(line, end)) {
        end++;
      }
      addRun(line, at, end, out);
      at = end;
    }
    return out;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** A digit, or a point or comma between two digits. */
  private static boolean isPart(String line, int at) {
    char c = line.charAt(at);
    boolean inside = at + 1 < line.length() && isDigit(line.charAt(at + 1));
    return isDigit(c) || (MARKS.indexOf(c) >= 0 && inside);
  }

  private static void addRun(String line, int from, int to, List<Numeral> out) {
    String run = line.substring(from, to);
    long points = run.chars().filter(c -> c == '.').count();
    long commas = run.chars().filter(c -> c == ',').count();
    if (points + commas <= 1) {
      out.add(new Numeral(from, to, points + commas == 1));
    } else if (points == 1 || commas == 1) {
      split(line, from, to, points == 1 ? ',' : '.', out);
    }
  }

  /** One mark comes once and is the decimal mark; the other parts fields. */
  private static void split(String line, int from, int to, char parts, List<Numeral> out) {
    int start = from;
    for (int at = from; at <= to; at++) {
      if (at == to || line.charAt(at) == parts) {
        String piece = line.substring(start, at);
        out.add(new Numeral(start, at, piece.indexOf('.') >= 0 || piece.indexOf(',') >= 0));
        start = at + 1;
      }
    }
  }
}
