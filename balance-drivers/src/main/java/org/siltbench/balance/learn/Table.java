package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Lines of one shape laid under each other, column by column; a word may be missing in some.
 *
 * @param cuts the lines
 * @param before the columns before the number
 * @param after the columns after it
 */
record Table(List<Cut> cuts, List<Column> before, List<Column> after) {

  /** A line's atoms on both sides. */
  private record Sides(Cut cut, List<Atom> before, List<Atom> after) {
    String shape() {
      return shape(before) + " # " + shape(after);
    }

    private static String shape(List<Atom> atoms) {
      return atoms.stream().map(Atom::kind).collect(Collectors.joining(" "));
    }

    int size() {
      return before.size() + after.size();
    }
  }

  /** Lays lines under the fullest shape that is common among them; others are left out. */
  static Table of(List<Cut> cuts) {
    List<Sides> all =
        cuts.stream().map(c -> new Sides(c, Atom.in(c.before()), Atom.in(c.after()))).toList();
    Sides base = base(all);
    List<Cut> kept = new ArrayList<>();
    List<List<Atom>> left = new ArrayList<>();
    List<List<Atom>> right = new ArrayList<>();
    for (Sides line : all) {
      List<Atom> b = fit(line.before(), base.before());
      List<Atom> a = fit(line.after(), base.after());
      if (b.size() == base.before().size() && a.size() == base.after().size()) {
        kept.add(line.cut());
        left.add(b);
        right.add(a);
      }
    }
    return new Table(kept, columns(left, base.before()), columns(right, base.after()));
  }

  private static Sides base(List<Sides> all) {
    Map<String, List<Sides>> shapes =
        all.stream()
            .collect(Collectors.groupingBy(Sides::shape, LinkedHashMap::new, Collectors.toList()));
    int common = Math.max(1, all.size() / 10);
    return shapes.values().stream()
        .filter(s -> s.size() >= common)
        .max(
            Comparator.<List<Sides>>comparingInt(s -> s.get(0).size()).thenComparingInt(List::size))
        .orElseThrow()
        .get(0);
  }

  private static final Atom MISSING = new Atom("", false, 0);

  /** The line's atoms with one missing word put in where it fits best; shorter if none fits. */
  private static List<Atom> fit(List<Atom> line, List<Atom> base) {
    if (line.size() == base.size()) {
      return sameKinds(line, base) ? line : List.of();
    }
    if (line.size() + 1 != base.size()) {
      return List.of();
    }
    return IntStream.range(0, base.size())
        .filter(i -> !base.get(i).separator())
        .mapToObj(i -> with(line, i))
        .filter(l -> sameKinds(l, base))
        .max(Comparator.comparingLong(l -> alike(l, base)))
        .orElse(List.of());
  }

  private static List<Atom> with(List<Atom> line, int missing) {
    List<Atom> out = new ArrayList<>(line);
    out.add(missing, MISSING);
    return out;
  }

  private static boolean sameKinds(List<Atom> line, List<Atom> base) {
    return IntStream.range(0, line.size())
        .allMatch(i -> line.get(i).kind().equals(base.get(i).kind()));
  }

  /** How much alike two lines are: same texts most, then digits under digits. */
  private static long alike(List<Atom> line, List<Atom> base) {
    return IntStream.range(0, line.size())
        .mapToLong(i -> alike(line.get(i).text(), base.get(i).text()))
        .sum();
  }

  private static long alike(String a, String b) {
    boolean digits = a.matches("[0-9]+") == b.matches("[0-9]+");
    return a.isEmpty() ? 0 : a.equals(b) ? 3 : digits ? 1 : 0;
  }

  private static List<Column> columns(List<List<Atom>> lines, List<Atom> base) {
    List<Column> out = new ArrayList<>();
    for (int i = 0; i < base.size(); i++) {
      int column = i;
      List<Atom> atoms = lines.stream().map(l -> l.get(column)).toList();
      List<Integer> blanks =
          atoms.stream().filter(a -> !a.text().isEmpty()).map(Atom::blanks).toList();
      out.add(
          new Column(
              atoms.stream().map(Atom::text).toList(),
              base.get(i).separator(),
              blanks.stream().mapToInt(Integer::intValue).min().orElse(0),
              blanks.stream().mapToInt(Integer::intValue).max().orElse(0)));
    }
    return out;
  }
}
