package org.siltbench.balance.format;

/** The parts of a line as numbers that a switch goes by; the commonest come first. */
final class Step {

  static final int BLANKS = 0;
  static final int GAP = 1;
  static final int SIGN = 2;
  static final int NUMBER = 3;
  static final int UNIT = 4;
  static final int MARK = 5;
  static final int TEXT = 6;
  static final int UNIT_OR_NONE = 7;
  static final int DIGITS = 8;
  static final int WORD = 9;
  static final int ANY = 10;
  static final int CHECK = 11;

  private Step() {}

  static int of(Part part) {
    if (part instanceof Part.UnitField u) {
      return u.optional() ? UNIT_OR_NONE : UNIT;
    } else if (part instanceof Part.Text) {
      return TEXT;
    } else if (part instanceof Part.Blanks) {
      return BLANKS;
    } else if (part instanceof Part.Gap) {
      return GAP;
    } else if (part instanceof Part.Sign) {
      return SIGN;
    } else if (part instanceof Part.Numeral) {
      return NUMBER;
    }
    return rare(part);
  }

  private static int rare(Part part) {
    if (part instanceof Part.MarkField) {
      return MARK;
    } else if (part instanceof Part.Digits) {
      return DIGITS;
    } else if (part instanceof Part.Word) {
      return WORD;
    }
    return part instanceof Part.Any ? ANY : CHECK;
  }
}
