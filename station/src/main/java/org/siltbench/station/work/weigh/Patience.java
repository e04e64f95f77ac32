package org.siltbench.station.work.weigh;

import java.time.Duration;

/**
 * How long a silent balance is waited for.
 *
 * @param silence after this long without a line the person is told
 * @param giveUp after this long without a line, or without the link, the work ends
 */
public record Patience(Duration silence, Duration giveUp) {

  /** Tells after ten seconds, ends after five minutes. */
  public static final Patience USUAL = new Patience(Duration.ofSeconds(10), Duration.ofMinutes(5));

  /** Refuses nonsense. */
  public Patience {
    if (silence.isNegative() || silence.isZero() || giveUp.compareTo(silence) < 0) {
      throw new IllegalArgumentException("silence " + silence + ", give up " + giveUp);
    }
  }

  /** The same patience until told, another until the end. */
  public Patience endingAfter(Duration other) {
    return new Patience(silence.compareTo(other) < 0 ? silence : other, other);
  }
}
