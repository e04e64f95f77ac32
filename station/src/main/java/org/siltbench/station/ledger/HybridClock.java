package org.siltbench.station.ledger;

/** The next value of the hybrid clock: past everything seen, and never behind the wall clock. */
public final class HybridClock {

  private Hlc last = new Hlc(0, 0);

  /** Takes note of a value in an entry. */
  public void see(Hlc seen) {
    if (seen.compareTo(last) > 0) {
      last = seen;
    }
  }

  /** A value after all those seen. */
  public Hlc next(long wallMillis) {
    if (wallMillis > last.millis()) {
      last = new Hlc(wallMillis, 0);
    } else if (last.counter() == Integer.MAX_VALUE) {
      last = new Hlc(last.millis() + 1, 0);
    } else {
      last = new Hlc(last.millis(), last.counter() + 1);
    }
    return last;
  }
}
