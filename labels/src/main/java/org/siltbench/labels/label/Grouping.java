package org.siltbench.labels.label;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.id.Alphabet;
import org.siltbench.calc.id.CheckCharacter;
import org.siltbench.calc.id.FilterId;

/** Parts a filter ID into groups of three or four that a person can read back. */
final class Grouping {

  private static final int LONGEST = 4;

  private Grouping() {}

  static List<String> of(String id) {
    if (id.indexOf('-') >= 0) {
      return List.of(id.split("(?<=-)"));
    }
    if (id.indexOf(' ') >= 0) {
      return List.of(id.split(" "));
    }
    if (isFilterId(id)) {
      return List.of(id.substring(0, 4) + '-', id.substring(4, 6) + '-', id.substring(6));
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

  private static boolean isFilterId(String id) {
    return id.length() == FilterId.LENGTH
        && Alphabet.covers(id)
        && CheckCharacter.MOD_37_2.holds(id);
  }

  /** The groups on one line or two. */
  static List<String> lines(String id, int lines) {
    List<String> groups = of(id);
    String between = groups.get(0).endsWith("-") ? "" : " ";
    if (lines == 1 || groups.size() == 1) {
      return List.of(String.join(between, groups));
    }
    int half = (groups.size() + 1) / 2;
    return List.of(
        String.join(between, groups.subList(0, half)),
        String.join(between, groups.subList(half, groups.size())));
  }
}
