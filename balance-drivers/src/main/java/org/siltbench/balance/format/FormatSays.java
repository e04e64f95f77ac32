package org.siltbench.balance.format;

import org.siltbench.calc.reason.ReasonCode;

/** Why a line does not fit its format. */
public enum FormatSays implements ReasonCode {
  AT_LINE("line {0}: {1}"),
  FIRST_LINE("the first line must be \"{0}\""),
  TOO_MANY_LINES("more lines than a line format has"),
  LENGTH("the line has {0} characters, not {1}"),
  AT_CHARACTER("{0}, at character {1}"),
  UNIT_MISSING("the unit is missing"),
  LEFT_OVER("more than the format knows: {0}"),
  NO_NUMBER("no number the format takes: {0}"),
  LINE_ENDS("the line ends"),
  CHECK_DIGITS("the check digits do not agree with the line: it was damaged on the way"),
  MARK_UNKNOWN("a mark the format does not know: {0}"),
  EXPECTED("expected {0}, found {1}"),
  UNEXPECTED("unexpected text {0}"),
  OTHER_UNIT("unit {0}, which is not expected; nothing is converted"),
  UNIT_UNKNOWN("no unit the format knows: {0}"),
  NOT_A_MASS("the number is finer than a nanogram or beyond 9200 t"),
  UNIT_CHANGED("the unit changed from {0} to {1}: set the balance back");

  private final String english;

  FormatSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
