package org.siltbench.station.ledger;

/**
 * A hybrid logical clock value: milliseconds since 1970 and a counter. It never goes back at a
 * bench, and moves past every value it meets in another bench's entries, so that order by clock
 * keeps cause before effect even where a wall clock jumps.
 *
 * @param millis milliseconds since 1970-01-01T00:00Z, the highest seen
 * @param counter tells entries of the same millisecond apart
 */
public record Hlc(long millis, int counter) implements Comparable<Hlc> {

  @Override
  public int compareTo(Hlc other) {
    int byTime = Long.compare(millis, other.millis);
    return byTime != 0 ? byTime : Integer.compare(counter, other.counter);
  }
}
