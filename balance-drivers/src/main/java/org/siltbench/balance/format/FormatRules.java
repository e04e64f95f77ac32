package org.siltbench.balance.format;

import java.util.List;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.Units;

/** What makes a format safe to read masses by. */
final class FormatRules {

  private FormatRules() {}

  static void check(List<Part> line, Units units, List<MarkText> marks, List<MarkText> texts) {
    need(count(line, Part.Numeral.class) == 1, "the line needs exactly one number");
    need(count(line, Part.Sign.class) <= 1, "the line can have one sign at most");
    need(count(line, Part.UnitField.class) <= 1, "the line can have one unit at most");
    boolean hasUnit = count(line, Part.UnitField.class) == 1;
    need(!hasUnit || !units.texts().isEmpty() || units.supplied() != null, "no unit is given");
    need(hasUnit || units.supplied() != null, "without a unit in the line, supply one");
    boolean hasMark = count(line, Part.MarkField.class) > 0;
    need(hasMark == !marks.isEmpty(), "a mark in the line and its texts belong together");
    need(texts.stream().noneMatch(t -> t.text().isBlank()), "a text rule needs a text");
    for (int i = 1; i < line.size(); i++) {
      checkPair(line.get(i - 1), line.get(i));
    }
  }

  private static void checkPair(Part left, Part right) {
    boolean digitsMeet =
        (left instanceof Part.Numeral && right instanceof Part.Digits)
            || (left instanceof Part.Digits && right instanceof Part.Numeral);
    need(!digitsMeet, "nothing parts the number from the digits beside it");
    boolean wordBeforeNumber = left instanceof Part.Word && right instanceof Part.Numeral;
    need(!wordBeforeNumber, "a word before the number would swallow it: put a gap between");
    boolean wordAfterNumber = left instanceof Part.Numeral && right instanceof Part.Word;
    need(!wordAfterNumber, "a word after the number would hide damage: put a gap between");
  }

  private static long count(List<Part> line, Class<? extends Part> kind) {
    return line.stream().filter(kind::isInstance).count();
  }

  private static void need(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
