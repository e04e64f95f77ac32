package org.siltbench.balance.format;

/** What was found in the line read last; written over by the next line. */
final class Match {

  int numberStart;
  int numberEnd;
  long mantissa;
  int decimals;
  boolean negative;

  /** The place of the unit among the units of the format; below zero if there is none yet. */
  int unit;

  /** The rank of the {@link Meaning} so far. */
  int meaning;

  /** The mass; it holds only if {@link #inRange} does. */
  long nanograms;

  /** False if the number is finer than a nanogram or beyond what fits. */
  boolean inRange;

  /** Where each part of the line began, and behind them the end of the last; set by the walk. */
  final int[] begins;

  /** The part that did not fit: -1 for the length, the count of parts for what was left over. */
  int failedPart;

  /** Where it should have stood. */
  int failedAt;

  Match(int parts) {
    begins = new int[parts + 1];
  }

  void begin(int supplied) {
    negative = false;
    unit = supplied;
    meaning = 0;
  }

  void mean(int rank) {
    meaning = Math.max(meaning, rank);
  }

  boolean fail(int part, int at) {
    failedPart = part;
    failedAt = at;
    return false;
  }
}
