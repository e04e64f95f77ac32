package org.siltbench.calc.method;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names that resemble a mistyped one. */
final class NearNames {

  private NearNames() {}

  /** The {@code count} nearest names by the number of single-character edits, nearest first. */
  static List<String> of(String name, Collection<String> names, int count) {
    String wanted = name.toLowerCase(Locale.ROOT);
    return names.stream()
        .sorted(Comparator.<String>comparingInt(n -> distance(wanted, n)).thenComparing(n -> n))
        .limit(count)
        .toList();
  }

  /** Levenshtein distance: insertions, deletions and substitutions each count one. */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int substitute = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(substitute, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
