package org.siltbench.balance.format;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.Optional;

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
  static String explain(int part, int at, LineFormat format, byte[] bytes, int from, int to) {
    if (part < 0) {
      return "the line has " + (to - from) + " characters, not " + format.length();
    }
    String rest = Visible.shorten(new String(bytes, at, to - at, ISO_8859_1), SHOWN);
    if (part >= format.line().size()) {
      return leftOver(rest, new String(bytes, at, to - at, ISO_8859_1));
    }
    return atPart(format.line().get(part), rest, new String(bytes, at, to - at, ISO_8859_1))
        + ", at character "
        + (at - from + 1);
  }

  private static String leftOver(String shown, String rest) {
    return rest.isEmpty() ? "the unit is missing" : "more than the format knows: " + shown;
  }

  private static String atPart(Part part, String shown, String rest) {
    if (part instanceof Part.UnitField) {
      return unit(shown, rest);
    } else if (part instanceof Part.Numeral) {
      return "no number the format takes: " + (rest.isEmpty() ? "the line ends" : shown);
    } else if (part instanceof Part.Check) {
      return "the check digits do not agree with the line: it was damaged on the way";
    } else if (part instanceof Part.MarkField) {
      return "a mark the format does not know: " + shown;
    } else if (part instanceof Part.Text t) {
      return "expected " + Visible.quote(t.text()) + ", found " + shown;
    }
    return "unexpected text " + shown;
  }

  private static String unit(String shown, String rest) {
    Optional<MassUnit> other = MassUnit.ofSymbol(rest.strip());
    if (other.isPresent()) {
      return "unit " + other.get().symbol() + ", which is not expected; nothing is converted";
    }
    return rest.isBlank() ? "the unit is missing" : "no unit the format knows: " + shown;
  }
}
