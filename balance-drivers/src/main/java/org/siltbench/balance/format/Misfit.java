package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Optional;
import org.siltbench.calc.reason.Reason;

/** Says in a few words why a line did not fit its format. */
final class Misfit {

  private static final int SHOWN = 12;

  private Misfit() {}

  /**
   * Why.
   *
   * @param part the part that did not fit: -1 for the length, the count of parts for what was left
   *     over
   * @param at where it should have stood
   */
  static Reason explain(int part, int at, LineFormat format, byte[] bytes, int from, int to) {
    if (part < 0) {
      return FormatSays.LENGTH.with(to - from, format.length());
    }
    String rest = Visible.shorten(new String(bytes, at, to - at, ISO_8859_1), SHOWN);
    if (part >= format.line().size()) {
      return leftOver(rest, new String(bytes, at, to - at, ISO_8859_1));
    }
    return FormatSays.AT_CHARACTER.with(
        atPart(format.line().get(part), rest, new String(bytes, at, to - at, ISO_8859_1)),
        at - from + 1);
  }

  private static Reason leftOver(String shown, String rest) {
    return rest.isEmpty() ? FormatSays.UNIT_MISSING.with() : FormatSays.LEFT_OVER.with(shown);
  }

  private static Reason atPart(Part part, String shown, String rest) {
    if (part instanceof Part.UnitField) {
      return unit(shown, rest);
    } else if (part instanceof Part.Numeral) {
      return FormatSays.NO_NUMBER.with(rest.isEmpty() ? FormatSays.LINE_ENDS.with() : shown);
    } else if (part instanceof Part.Check) {
      return FormatSays.CHECK_DIGITS.with();
    } else if (part instanceof Part.MarkField) {
      return FormatSays.MARK_UNKNOWN.with(shown);
    } else if (part instanceof Part.Text t) {
      return FormatSays.EXPECTED.with(Visible.quote(t.text()), shown);
    }
    return FormatSays.UNEXPECTED.with(shown);
  }

  private static Reason unit(String shown, String rest) {
    Optional<MassUnit> other = MassUnit.ofSymbol(rest.strip());
    if (other.isPresent()) {
      return FormatSays.OTHER_UNIT.with(other.get().symbol());
    }
    return rest.isBlank() ? FormatSays.UNIT_MISSING.with() : FormatSays.UNIT_UNKNOWN.with(shown);
  }
}
