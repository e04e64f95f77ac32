package org.siltbench.balance.practice;

import java.io.IOException;
import java.time.Duration;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;
import org.siltbench.balance.Timebase;

/**
 * Readings of the simulated balance, with the hand that serves it and the clock it keeps. In step
 * (no speed given) the clock is a {@link org.siltbench.balance.VirtualTime} that moves only while
 * readings are pulled.
 */
public final class PracticeSource implements ReadingSource {

  private final ReadingSource readings;
  private final Hand hand;
  private final Timebase time;

  /** Joins the readings of a practice balance with its hand and clock. */
  public PracticeSource(ReadingSource readings, Hand hand, Timebase time) {
    this.readings = readings;
    this.hand = hand;
    this.time = time;
  }

  /** The hand at this balance. */
  public Hand hand() {
    return hand;
  }

  /** The clock this balance keeps: everybody who judges its readings looks at this one. */
  public Timebase time() {
    return time;
  }

  @Override
  public SourceEvent next(Duration atMost) throws InterruptedException {
    return readings.next(atMost);
  }

  @Override
  public String describe() {
    return readings.describe();
  }

  @Override
  public String formatName() {
    return readings.formatName();
  }

  @Override
  public void close() throws IOException {
    readings.close();
  }
}
