package org.siltbench.balance.format;

import java.util.List;
import org.siltbench.balance.format.LineFormat.MarkText;
import org.siltbench.balance.format.LineFormat.Units;
import org.siltbench.calc.reason.Unfit;

/** What makes a format safe to read masses by. */
final class FormatRules {

  private FormatRules() {}

  static void check(List<Part> line, Units units, List<MarkText> marks, List<MarkText> texts) {
    need(count(line, Part.Numeral.class) == 1, FormatFileSays.ONE_NUMBER);
    need(count(line, Part.Sign.class) <= 1, FormatFileSays.ONE_SIGN);
    need(count(line, Part.UnitField.class) <= 1, FormatFileSays.ONE_UNIT);
    boolean hasUnit = count(line, Part.UnitField.class) == 1;
    need(!hasUnit || !units.texts().isEmpty() || units.supplied() != null, FormatFileSays.NO_UNIT);
    need(hasUnit || units.supplied() != null, FormatFileSays.SUPPLY_UNIT);
    boolean hasMark = count(line, Part.MarkField.class) > 0;
    need(hasMark == !marks.isEmpty(), FormatFileSays.MARK_AND_TEXTS);
    need(texts.stream().noneMatch(t -> t.text().isBlank()), FormatFileSays.TEXT_RULE);
    for (int i = 1; i < line.size(); i++) {
      checkPair(line.get(i - 1), line.get(i));
    }
  }

  private static void checkPair(Part left, Part right) {
    boolean digitsMeet =
        (left instanceof Part.Numeral && right instanceof Part.Digits)
            || (left instanceof Part.Digits && right instanceof Part.Numeral);
    need(!digitsMeet, FormatFileSays.DIGITS_MEET);
    boolean wordBeforeNumber = left instanceof Part.Word && right instanceof Part.Numeral;
    need(!wordBeforeNumber, FormatFileSays.WORD_BEFORE);
    boolean wordAfterNumber = left instanceof Part.Numeral && right instanceof Part.Word;
    need(!wordAfterNumber, FormatFileSays.WORD_AFTER);
  }

  private static long count(List<Part> line, Class<? extends Part> kind) {
    return line.stream().filter(kind::isInstance).count();
  }

  private static void need(boolean holds, FormatFileSays otherwise) {
    if (!holds) {
      throw new Unfit(otherwise);
    }
  }
}
