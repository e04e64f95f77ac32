package org.siltbench.demo.bench.stability;

/**
 * What one watcher made of a stream. Times in seconds from the first touch, infinite if never.
 *
 * @param readings readings from the first touch to the record
 */
record Outcome(double provisionalAt, double recordedAt, double recorded, int readings) {

  static final Outcome NEVER =
      new Outcome(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NaN, 0);

  boolean isRecorded() {
    return recordedAt < Double.POSITIVE_INFINITY;
  }
}
