package org.siltbench.balance;

import java.io.IOException;
import java.time.Duration;

/**
 * A running stream of readings from one balance, pulled by one thread. Everything before the first
 * line end is thrown away: half a line is a wrong mass.
 */
public interface ReadingSource extends AutoCloseable {

  /**
   * The next event, waiting at most the given time of this source's own clock; {@link
   * SourceEvent.Quiet} when the time has run out.
   */
  SourceEvent next(Duration atMost) throws InterruptedException;

  /** The text that names this balance and its line settings, for the record. */
  String describe();

  /** The name of the line format in use, for the record. */
  String formatName();

  /**
   * True if each line is one press of a key: nothing comes between, and no run of lines can show
   * that the value is at rest.
   */
  default boolean singly() {
    return false;
  }

  @Override
  void close() throws IOException;
}
