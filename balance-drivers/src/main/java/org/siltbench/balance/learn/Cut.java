package org.siltbench.balance.learn;

import java.math.BigDecimal;

/**
 * One line cut at its mass.
 *
 * @param line the line
 * @param situation what was done
 * @param sample which sample it came from
 * @param before everything before the sign and number
 * @param sign the sign, or 0 if none is there
 * @param signAt where the sign stood
 * @param glued true if the sign follows a letter or digit without a blank
 * @param number the digits and the decimal mark
 * @param unit the unit word, or empty
 * @param unitFirst true if the unit stands before the number
 * @param after everything after number, unit and trailing sign
 */
record Cut(
    String line,
    Situation situation,
    int sample,
    String before,
    char sign,
    SignAt signAt,
    boolean glued,
    String number,
    String unit,
    boolean unitFirst,
    String after) {

  /** Where a sign stands. */
  enum SignAt {
    NONE,
    BEFORE,
    AFTER_NUMBER,
    AFTER_UNIT
  }

  int decimals() {
    int mark = Math.max(number.indexOf('.'), number.indexOf(','));
    return mark < 0 ? 0 : number.length() - mark - 1;
  }

  int wholeDigits() {
    int mark = Math.max(number.indexOf('.'), number.indexOf(','));
    return mark < 0 ? number.length() : mark;
  }

  /** The same line without the two check digits it ends in. */
  Cut withoutCheck() {
    int end = after.length() - Atom.trailingBlanks(after) - 2;
    String rest = after.substring(0, end);
    return new Cut(
        line, situation, sample, before, sign, signAt, glued, number, unit, unitFirst, rest);
  }

  /** The decimal mark, or 0. */
  char point() {
    return number.indexOf(',') >= 0 ? ',' : number.indexOf('.') >= 0 ? '.' : 0;
  }

  /** The value in displayed steps, to see it move. */
  double steps() {
    BigDecimal value = new BigDecimal(number.replace(',', '.')).movePointRight(decimals());
    return sign == '-' ? -value.doubleValue() : value.doubleValue();
  }
}
