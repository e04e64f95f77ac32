package org.siltbench.balance.learn;

import org.siltbench.calc.reason.ReasonCode;

/** What the learner found in captured lines, and what stays unknown. */
public enum LearnSays implements ReasonCode {
  LINES_END("Lines end with {0}."),
  RETURN_OR_FEED("a carriage return or a line feed"),
  UNIT_MARKS_REST("The unit is missing while the value moves: that is its mark."),
  NUMBER_IN("In \"{0}\" the number is {1}."),
  DECIMAL_MARK("The decimal mark is '{0}', decimals {1}."),
  FROM_TO("{0} to {1}"),
  SIGN_BEFORE("The sign stands before the number."),
  SIGN_BEHIND("The sign stands behind the number."),
  UNIT_IS("The unit is '{0}'."),
  MARK_MEANS("'{0}' means {1}."),
  NOTHING_THERE("nothing in its place"),
  CHECK_DIGITS("The last two characters are check digits ({0})."),
  PASSED_OVER("'{0}' changes from line to line and is passed over."),
  MEANS_OVER("'{0}' means over range."),
  BY_ITSELF("It talks by itself: the lines come steadily."),
  ON_KEY("It talks on its key: single lines with silence between."),
  WHEN_ASKED("It talks when asked."),
  MEANING_STABLE("stable"),
  MEANING_MOVING("moving"),
  MEANING_NOTHING("nothing"),
  MEANING_OVER("over"),
  MEANING_UNDER("under"),
  MEANING_FAULT("fault"),
  MEANING_IGNORE("ignore"),
  NO_LINE_END("line end: no two lines seen; capture some more"),
  NO_NUMBER("number: no line has one number that is surely the mass"),
  NO_UNIT("unit: no line names one; say it, as unit=g"),
  SEVERAL_MASSES("mass: several come in turn, as {0}"),
  UNITS_DIFFER("shape: the lines with a unit are all different; capture some more"),
  LINES_WITHOUT_UNIT("lines without unit: not surely the moving ones; they are not read"),
  NO_MANNER("whether it talks by itself, on its key, or when asked"),
  LINES_DISAGREE("shape: the lines do not agree with each other; capture some more"),
  NO_MINUS("minus sign: none seen; taken before the number only"),
  MARK_UNKNOWN("mark '{0}': what it means"),
  NO_STABLE_MARK("stable mark: none seen"),
  IN_EVERY_LINE("stable mark: '{0}' is in every line; only such lines are read"),
  NO_MASS_IN("a line without a mass: {0}"),
  BOTH_MARKS("decimal mark: both a point and a comma are used"),
  COMMA_THOUSANDS("decimal mark: the comma in {0} may part thousands; show the empty pan"),
  TWO_NUMBERS("number: two numbers with decimals stand side by side"),
  DIGITS_BEFORE("number: the digits before {0} may belong to it"),
  SIGN_BOTH_SIDES("sign: it stands before the number in some lines and behind it in others"),
  DASH_EVERYWHERE("sign: a dash stands in every line; show a line above zero"),
  DASH_UNCLEAR("sign: a dash comes and goes beside the number, and its place is not clear"),
  CAPITAL_G("unit: G stands in some lines only and may not mean gram"),
  NO_FORMAT("no format"),
  NOTHING_AMISS("");

  private final String english;

  LearnSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
