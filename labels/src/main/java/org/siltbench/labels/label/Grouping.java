package org.siltbench.labels.label;

import java.util.ArrayList;
import java.util.List;

/** Parts a filter ID into groups of three or four that a person can read back. */
final class Grouping {

  private static final int LONGEST = 4;

  private Grouping() {}

  static List<String> of(String id) {
    if (id.indexOf(' ') >= 0 || id.indexOf('-') >= 0) {
      return List.of(id.split("(?<=-)| "));
    }
    int groups = (id.length() + LONGEST - 1) / LONGEST;
    List<String> out = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < groups; i++) {
      int length = (id.length() - from + groups - i - 1) / (groups - i);
      out.add(id.substring(from, from + length));
      from += length;
    }
    return out;
  }

  /** The groups on one line or two. */
  static List<String> lines(String id, int lines) {
    List<String> groups = of(id);
    if (lines == 1 || groups.size() == 1) {
      return List.of(String.join(" ", groups));
    }
    int half = (groups.size() + 1) / 2;
    return List.of(
        String.join(" ", groups.subList(0, half)),
        String.join(" ", groups.subList(half, groups.size())));
  }
}
