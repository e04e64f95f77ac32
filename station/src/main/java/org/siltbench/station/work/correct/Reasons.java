package org.siltbench.station.work.correct;

import org.siltbench.station.Problem;

/** Why something was changed. */
public final class Reasons {

  private static final int MAX = 500;

  private Reasons() {}

  /** The reason without blanks around; refuses one that says nothing. */
  public static String check(String reason) {
    String text = reason.strip();
    if (text.length() < 3
        || text.length() > MAX
        || text.chars().anyMatch(Character::isISOControl)) {
      throw new Problem.WrongUse(CorrectSays.REASON, MAX);
    }
    return text;
  }
}
