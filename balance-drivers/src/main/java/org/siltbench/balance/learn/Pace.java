package org.siltbench.balance.learn;

import java.util.List;

/**
 * When bytes came while a sample was taken. Bytes that follow each other within a short breath are
 * one burst.
 *
 * @param starts when each burst began, ns after the listening began
 * @param lastHeard when the last byte came, ns after the listening began
 * @param listened how long the listening went on, ns; 0 if nobody listened to a live balance
 */
public record Pace(List<Long> starts, long lastHeard, long listened) {

  /** Nothing is known: a text without times. */
  public static final Pace UNKNOWN = new Pace(List.of(), 0, 0);

  /** Copies. */
  public Pace {
    starts = List.copyOf(starts);
  }
}
