package org.siltbench.balance.learn;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.siltbench.balance.format.LineFormat.NumberShape;
import org.siltbench.balance.format.Meaning;
import org.siltbench.balance.format.Part;
import org.siltbench.balance.format.Visible;
import org.siltbench.balance.learn.Cut.SignAt;
import org.siltbench.calc.reason.Reason;

/** Says in sentences what was inferred, on the captured text, and what stays unsure. */
final class Explanation {

  private Explanation() {}

  static void of(
      Table table,
      Optional<Marks.Found> mark,
      Optional<Part.Check> check,
      NumberShape number,
      List<Reason> findings,
      List<Reason> unknown) {
    Cut shown = table.cuts().get(table.cuts().size() - 1);
    findings.add(LearnSays.NUMBER_IN.with(Visible.show(shown.line()), shown.number()));
    findings.add(LearnSays.DECIMAL_MARK.with(number.point(), decimals(number)));
    sign(table.cuts(), findings, unknown);
    units(table.cuts(), findings);
    mark.ifPresent(m -> mark(m, findings, unknown));
    if (mark.isEmpty()) {
      noMark(table, unknown);
    }
    check.ifPresent(c -> findings.add(LearnSays.CHECK_DIGITS.with(c.sum().word())));
    ignored(table, mark, findings);
  }

  private static Object decimals(NumberShape number) {
    return number.least() == number.most()
        ? Integer.toString(number.most())
        : LearnSays.FROM_TO.with(number.least(), number.most());
  }

  private static void sign(List<Cut> cuts, List<Reason> findings, List<Reason> unknown) {
    Optional<Cut> minus = cuts.stream().filter(c -> c.sign() == '-').findFirst();
    if (minus.isEmpty()) {
      unknown.add(LearnSays.NO_MINUS.with());
      return;
    }
    boolean before = minus.get().signAt() == SignAt.BEFORE;
    findings.add((before ? LearnSays.SIGN_BEFORE : LearnSays.SIGN_BEHIND).with());
  }

  private static void units(List<Cut> cuts, List<Reason> findings) {
    String units =
        cuts.stream()
            .map(Cut::unit)
            .filter(u -> !u.isEmpty())
            .distinct()
            .sorted()
            .map(Visible::show)
            .collect(Collectors.joining("', '"));
    if (!units.isEmpty()) {
      findings.add(LearnSays.UNIT_IS.with(units));
    }
  }

  private static void mark(Marks.Found mark, List<Reason> findings, List<Reason> unknown) {
    mark.meanings()
        .forEach(
            (text, meaning) -> {
              Object shown = text.isEmpty() ? LearnSays.NOTHING_THERE.with() : Visible.show(text);
              if (meaning == Meaning.NOTHING) {
                unknown.add(LearnSays.MARK_UNKNOWN.with(shown));
              } else {
                findings.add(LearnSays.MARK_MEANS.with(shown, said(meaning)));
              }
            });
  }

  private static Reason said(Meaning meaning) {
    return LearnSays.valueOf("MEANING_" + meaning.name()).with();
  }

  private static void noMark(Table table, List<Reason> unknown) {
    String words =
        Stream.concat(table.before().stream(), table.after().stream())
            .filter(c -> c.isConstant() && !c.separator())
            .map(c -> Visible.show(c.values().get(0)))
            .distinct()
            .collect(Collectors.joining("', '"));
    unknown.add(
        words.isEmpty() ? LearnSays.NO_STABLE_MARK.with() : LearnSays.IN_EVERY_LINE.with(words));
  }

  private static void ignored(Table table, Optional<Marks.Found> mark, List<Reason> findings) {
    Stream.concat(table.before().stream(), table.after().stream())
        .filter(c -> !c.isConstant() && mark.map(m -> !m.column().equals(c)).orElse(true))
        .forEach(c -> findings.add(LearnSays.PASSED_OVER.with(Visible.show(c.values().get(0)))));
  }
}
