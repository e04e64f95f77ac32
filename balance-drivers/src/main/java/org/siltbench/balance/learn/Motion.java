package org.siltbench.balance.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Which lines were taken while the value moved, told by the values themselves and by the labels.
 */
final class Motion {

  private static final double AT_REST = 2;
  private static final double MOVING = 4;
  private static final double SHARE_STILL = 0.08;
  private static final double SHARE_MOVING = 0.25;

  /** How a line was. */
  enum How {
    STILL,
    MOVING,
    UNSURE
  }

  private final List<How> lines = new ArrayList<>();

  Motion(List<Cut> cuts) {
    for (int i = 0; i < cuts.size(); i++) {
      lines.add(how(cuts, i));
    }
  }

  private static How how(List<Cut> cuts, int i) {
    double before = step(cuts, i - 1, i);
    double after = step(cuts, i, i + 1);
    Situation told = cuts.get(i).situation();
    if (Math.max(before, after) <= AT_REST && told != Situation.MOVING && before + after >= 0) {
      return How.STILL;
    }
    double least = before < 0 ? after : after < 0 ? before : Math.min(before, after);
    boolean moved = least > MOVING;
    boolean restTold = told == Situation.EMPTY || told == Situation.LOAD;
    if (moved && !restTold) {
      return How.MOVING;
    }
    return told == Situation.MOVING && Math.max(before, after) > MOVING ? How.MOVING : How.UNSURE;
  }

  /**
   * The step between two lines of one sample, in displayed steps; −1 if they are not neighbours.
   */
  private static double step(List<Cut> cuts, int i, int k) {
    if (i < 0 || k >= cuts.size() || cuts.get(i).sample() != cuts.get(k).sample()) {
      return -1;
    }
    Cut a = cuts.get(i);
    Cut b = cuts.get(k);
    return a.decimals() == b.decimals() ? Math.abs(a.steps() - b.steps()) : -1;
  }

  /** What a group of lines tells: moving, still, or neither clearly. */
  How of(IntPredicate group) {
    int still = 0;
    int moving = 0;
    int all = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (group.test(i)) {
        all++;
        still += lines.get(i) == How.STILL ? 1 : 0;
        moving += lines.get(i) == How.MOVING ? 1 : 0;
      }
    }
    if (moving >= 2 && moving >= SHARE_MOVING * all) {
      return How.MOVING;
    }
    return still >= 2 && moving <= SHARE_STILL * all ? How.STILL : How.UNSURE;
  }
}
