package org.siltbench.labels.draw;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines of a width. */
final class Lines {

  private Lines() {}

  static List<String> wrap(Paper paper, String text, Type type, double width) {
    List<String> out = new ArrayList<>();
    for (String part : text.split("\n", -1)) {
      wrapPart(paper, part.strip(), type, width, out);
    }
    return out;
  }

  private static void wrapPart(
      Paper paper, String text, Type type, double width, List<String> out) {
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" +")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (paper.width(longer, type) <= width) {
        line.setLength(0);
        line.append(longer);
        continue;
      }
      if (!line.isEmpty()) {
        out.add(line.toString());
        line.setLength(0);
      }
      line.append(broken(paper, word, type, width, out));
    }
    out.add(line.toString());
  }

  /** Breaks a word that is wider than a line; gives what is left of it. */
  private static String broken(
      Paper paper, String word, Type type, double width, List<String> out) {
    String rest = word;
    while (paper.width(rest, type) > width && rest.length() > 1) {
      int end = rest.length();
      while (end > 1 && paper.width(rest.substring(0, end), type) > width) {
        end = Math.max(1, rest.offsetByCodePoints(end, -1));
      }
      out.add(rest.substring(0, end));
      rest = rest.substring(end);
    }
    return rest;
  }
}
