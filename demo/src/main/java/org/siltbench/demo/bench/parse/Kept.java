package org.siltbench.demo.bench.parse;

import org.jspecify.annotations.Nullable;

/** Keeps the last readings, so that making them cannot be optimised away. */
final class Kept {

  private static final @Nullable Object[] LAST = new Object[64];

  private static int next;

  private Kept() {}

  static long keep(Object reading, long value) {
    next = (next + 1) % LAST.length;
    LAST[next] = reading;
    return value;
  }
}
