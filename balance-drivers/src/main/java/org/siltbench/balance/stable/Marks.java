package org.siltbench.balance.stable;

import org.siltbench.balance.Reading;

/**
 * Hears the balance's own stable mark as a witness: it can hold up a record, never make one. A
 * balance that calls most of a noisy load moving is not heard.
 */
final class Marks {

  private int stable;
  private int moving;
  private Reading.Mark newest = Reading.Mark.NONE;

  void clear() {
    stable = 0;
    moving = 0;
    newest = Reading.Mark.NONE;
  }

  void take(Reading.Mark mark) {
    stable += mark == Reading.Mark.STABLE ? 1 : 0;
    moving += mark == Reading.Mark.MOVING ? 1 : 0;
    newest = mark;
  }

  /** True if the balance, that called most of this load stable, says it moves now. */
  boolean speakAgainst() {
    return newest == Reading.Mark.MOVING && stable > moving;
  }
}
