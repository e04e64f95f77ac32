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

/** Says in sentences what was inferred, on the captured text, and what stays unsure. */
final class Explanation {

  private Explanation() {}

  static void of(
      Table table,
      Optional<Marks.Found> mark,
      Optional<Part.Check> check,
      NumberShape number,
      List<String> findings,
      List<String> unknown) {
    Cut shown = table.cuts().get(table.cuts().size() - 1);
    findings.add("In \"" + Visible.show(shown.line()) + "\" the number is " + shown.number() + ".");
    findings.add(
        "The decimal mark is '" + number.point() + "', decimals " + decimals(number) + ".");
    sign(table.cuts(), findings, unknown);
    units(table.cuts(), findings);
    mark.ifPresent(m -> mark(m, findings, unknown));
    if (mark.isEmpty()) {
      noMark(table, unknown);
    }
    check.ifPresent(
        c -> findings.add("The last two characters are check digits (" + c.sum().word() + ")."));
    ignored(table, mark, findings);
  }

  private static String decimals(NumberShape number) {
    return number.least() == number.most()
        ? Integer.toString(number.most())
        : number.least() + " to " + number.most();
  }

  private static void sign(List<Cut> cuts, List<String> findings, List<String> unknown) {
    Optional<Cut> minus = cuts.stream().filter(c -> c.sign() == '-').findFirst();
    if (minus.isEmpty()) {
      unknown.add("minus sign: none seen; taken before the number only");
      return;
    }
    boolean before = minus.get().signAt() == SignAt.BEFORE;
    findings.add("The sign stands " + (before ? "before" : "behind") + " the number.");
  }

  private static void units(List<Cut> cuts, List<String> findings) {
    String units =
        cuts.stream()
            .map(Cut::unit)
            .filter(u -> !u.isEmpty())
            .distinct()
            .sorted()
            .map(Visible::show)
            .collect(Collectors.joining("', '"));
    if (!units.isEmpty()) {
      findings.add("The unit is '" + units + "'.");
    }
  }

  private static void mark(Marks.Found mark, List<String> findings, List<String> unknown) {
    mark.meanings()
        .forEach(
            (text, meaning) -> {
              String shown = text.isEmpty() ? "nothing in its place" : Visible.show(text);
              if (meaning == Meaning.NOTHING) {
                unknown.add("mark '" + shown + "': what it means");
              } else {
                findings.add("'" + shown + "' means " + meaning.word() + ".");
              }
            });
  }

  private static void noMark(Table table, List<String> unknown) {
    String words =
        Stream.concat(table.before().stream(), table.after().stream())
            .filter(c -> c.isConstant() && !c.separator())
            .map(c -> Visible.show(c.values().get(0)))
            .distinct()
            .collect(Collectors.joining("', '"));
    unknown.add(
        words.isEmpty()
            ? "stable mark: none seen"
            : "stable mark: '" + words + "' is in every line; only such lines are read");
  }

  private static void ignored(Table table, Optional<Marks.Found> mark, List<String> findings) {
    Stream.concat(table.before().stream(), table.after().stream())
        .filter(c -> !c.isConstant() && mark.map(m -> !m.column().equals(c)).orElse(true))
        .forEach(
            c ->
                findings.add(
                    "'"
                        + Visible.show(c.values().get(0))
                        + "' changes from line to line and is passed over."));
  }
}
