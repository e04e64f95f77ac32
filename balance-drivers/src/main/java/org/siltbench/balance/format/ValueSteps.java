package org.siltbench.balance.format;

/**
 * Where in a line's steps the value stands: sign, number and unit with blanks between, which nearly
 * every format has one after the other and which are then walked in one go.
 *
 * @param from the first step of the value
 * @param to the step behind it; equal to {@code from} if these steps do not follow each other so
 * @param before the blanks before the sign
 * @param sign whether a sign may stand before the number
 * @param between the blanks between sign and number
 * @param after the blanks between number and unit
 */
record ValueSteps(int from, int to, Pad before, boolean sign, Pad between, Pad after) {

  /** Blanks that may, must or must not stand somewhere. */
  enum Pad {
    NONE,
    BLANKS,
    GAP
  }

  static ValueSteps in(int[] steps) {
    int number = 0;
    while (number < steps.length && steps[number] != Step.NUMBER) {
      number++;
    }
    Pad after = pad(steps, number + 1);
    int unit = number + 1 + width(after);
    if (number == steps.length || unit >= steps.length || steps[unit] != Step.UNIT) {
      return new ValueSteps(0, 0, Pad.NONE, false, Pad.NONE, Pad.NONE);
    }
    Pad between = pad(steps, number - 1);
    int signAt = number - 1 - width(between);
    boolean sign = signAt >= 0 && steps[signAt] == Step.SIGN;
    Pad before = sign ? pad(steps, signAt - 1) : Pad.NONE;
    int from = sign ? signAt - width(before) : number - width(between);
    return new ValueSteps(from, unit + 1, before, sign, between, after);
  }

  private static Pad pad(int[] steps, int at) {
    int step = at >= 0 && at < steps.length ? steps[at] : -1;
    return step == Step.BLANKS ? Pad.BLANKS : step == Step.GAP ? Pad.GAP : Pad.NONE;
  }

  private static int width(Pad pad) {
    return pad == Pad.NONE ? 0 : 1;
  }
}
