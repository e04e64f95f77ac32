package org.siltbench.demo.bench.parse;

import org.jspecify.annotations.Nullable;

/** Keeps the last reading, so that making it cannot be optimised away. */
final class Kept {

  @SuppressWarnings("unused") // only written: the reading escapes by it
  private static @Nullable Object last;

  private Kept() {}

  static long keep(Object reading, long value) {
    last = reading;
    return value;
  }
}
