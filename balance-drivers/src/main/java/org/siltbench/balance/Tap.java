package org.siltbench.balance;

/** Sees the bytes of a link as they arrive, for a recording or for the eye. */
@FunctionalInterface
public interface Tap {

  /** Sees nothing. */
  Tap NONE = (bytes, count, nanos) -> {};

  /** The front {@code count} bytes arrived at the given moment of the link's monotonic clock. */
  void bytes(byte[] bytes, int count, long nanos);
}
