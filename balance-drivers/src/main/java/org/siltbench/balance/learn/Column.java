package org.siltbench.balance.learn;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One atom over all lines.
 *
 * @param values its text in each line, empty where the line lacks it
 * @param separator true if it is a separator
 * @param least fewest blanks before it
 * @param most most blanks before it
 */
record Column(List<String> values, boolean separator, int least, int most) {

  private static final int MOST_MARKS = 6;

  Set<String> distinct() {
    return new LinkedHashSet<>(values);
  }

  boolean isConstant() {
    return distinct().size() == 1;
  }

  boolean isOptional() {
    return values.contains("");
  }

  /** True if it can be a mark: few texts that come again. */
  boolean fewTexts() {
    int distinct = distinct().size();
    return distinct >= 2 && distinct <= MOST_MARKS && values.size() >= 2 * distinct - 1;
  }

  /** True if all values are digits: a counter or a number of the balance. */
  boolean allDigits() {
    return values.stream().allMatch(v -> v.matches("[0-9]+"));
  }

  boolean oneDigitEach() {
    return values.stream().allMatch(v -> v.matches("[0-9]"));
  }
}
