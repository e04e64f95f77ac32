package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.Meaning;
import org.siltbench.balance.format.Visible;
import org.siltbench.calc.reason.Reason;

/**
 * What lines without a mass say: over range where the person showed it, else only that they are
 * there.
 *
 * @param rules texts that tell such lines
 * @param findings what was found
 * @param unknown what could not be told
 */
record OtherLines(List<MarkText> rules, List<Reason> findings, List<Reason> unknown) {

  private static final int MOST_RULES = 4;
  private static final int SHORTEST = 2;

  static OtherLines of(List<String> others, List<Cut> cuts, List<String> over) {
    Set<String> usual =
        cuts.stream()
            .flatMap(c -> Stream.concat(Atom.in(c.before()).stream(), Atom.in(c.after()).stream()))
            .map(Atom::text)
            .collect(Collectors.toSet());
    Map<String, Meaning> rules = new LinkedHashMap<>();
    List<Reason> unknown = new ArrayList<>();
    for (String line : others) {
      String text = telling(line, usual);
      if (over.contains(line) && text.length() >= SHORTEST && rules.size() < MOST_RULES) {
        rules.put(text, Meaning.OVER);
      } else if (!over.contains(line)) {
        unknown.add(LearnSays.NO_MASS_IN.with(Visible.show(line)));
      }
    }
    List<MarkText> texts =
        rules.entrySet().stream().map(e -> new MarkText(e.getKey(), e.getValue())).toList();
    List<Reason> findings =
        texts.stream().map(t -> LearnSays.MEANS_OVER.with(Visible.show(t.text()))).toList();
    return new OtherLines(texts, findings, unknown.stream().distinct().limit(5).toList());
  }

  /** The longest word of a line that lines with a mass do not have. */
  private static String telling(String line, Set<String> usual) {
    return Atom.in(line).stream()
        .filter(a -> !a.separator())
        .map(Atom::text)
        .filter(t -> !usual.contains(t) && UnitWords.of(t) == null)
        .reduce("", (a, b) -> b.length() > a.length() ? b : a);
  }
}
