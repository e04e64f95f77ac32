package org.siltbench.balance.format;

import org.siltbench.calc.reason.ReasonCode;

/** What is wrong in the text of a line format, and what should stand there. */
public enum FormatFileSays implements ReasonCode {
  NO_KEY("expected KEY: VALUE; the keys are {0}"),
  KEY_TWICE("the key {0} is there twice"),
  NO_COLON("after the text comes a colon and what it means"),
  UNKNOWN_KEY("unknown key \"{0}\"; the keys are {1}"),
  ENDS("ends needs a character, as CR LF, or any"),
  NAME("a name has letters, digits, dash, dot, underscore, at most 64"),
  POINT("point must be . or , or either"),
  UNITS("units can only be: {0}"),
  DECIMALS("decimals must be a number, or two as in 3-5"),
  WHOLE("{0} must be a whole number of 0 to {1}"),
  UNIT("a unit is g, mg, kg, µg or ct, not {0}"),
  MEANING("it can mean {0}; not {1}"),
  TALKS("talks must be: {0}, {1}, or {2}"),
  NO_LINE("the key line is missing: the parts of a line"),
  UNKNOWN_PART("unknown part \"{0}\"; the parts are {1}"),
  CHECK("a check is xor, add or negated, not {0}"),
  NO_BYTE("a balance sends bytes; this is no byte: {0}"),
  AFTER_QUOTE("nothing may follow the closing quote: {0}"),
  QUOTES("expected a text in 'quotes': {0}"),
  QUOTE_OPEN("the closing quote is missing: {0}"),
  HEX("after \\x come two hex digits: {0}"),
  ESCAPE("no such escape: \\{0}"),
  TEXT_PART("a text part needs at least one character"),
  ANY_COUNT("any needs a count of 1 to {0}"),
  CHECK_FROM("the check must start at 0 or later"),
  MARK_OF_DECIMALS("the decimal mark is a point, a comma or either"),
  DECIMALS_RANGE("decimals must be 0 to 9, fewest first"),
  MISSING_UNIT("a missing unit can mean moving, or nothing"),
  LENGTH("length must be 0 to {0}"),
  CONTROL("\"{0}\" is no control character; write CR, LF, ETX, or 'text' in quotes"),
  END_LENGTH("a line end has at most {0} characters"),
  ONE_NUMBER("the line needs exactly one number"),
  ONE_SIGN("the line can have one sign at most"),
  ONE_UNIT("the line can have one unit at most"),
  NO_UNIT("no unit is given"),
  SUPPLY_UNIT("without a unit in the line, supply one"),
  MARK_AND_TEXTS("a mark in the line and its texts belong together"),
  TEXT_RULE("a text rule needs a text"),
  DIGITS_MEET("nothing parts the number from the digits beside it"),
  WORD_BEFORE("a word before the number would swallow it: put a gap between"),
  WORD_AFTER("a word after the number would hide damage: put a gap between");

  private final String english;

  FormatFileSays(String english) {
    this.english = english;
  }

  @Override
  public String english() {
    return english;
  }
}
