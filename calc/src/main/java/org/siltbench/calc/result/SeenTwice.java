package org.siltbench.calc.result;

import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds names that may occur more than once, in memory that stays below about 40 MB: exactly for
 * the first names, then by a fixed table of bits (a Bloom filter), which may name a few that occur
 * once but misses none that occurs twice.
 */
final class SeenTwice {

  private static final int EXACT = 200_000;
  private static final int BITS = 28;
  private static final int HASHES = 3;

  private final int mostRepeated;
  private final Set<String> repeated = new HashSet<>();
  private @Nullable Set<String> exact = new HashSet<>();
  private long[] bits = new long[0];

  /**
   * @param mostRepeated how many repeated names to keep at most
   */
  SeenTwice(int mostRepeated) {
    this.mostRepeated = mostRepeated;
  }

  void add(String name) {
    boolean before = exact != null ? !exact.add(name) : !mark(name);
    if (before && repeated.size() < mostRepeated) {
      repeated.add(name);
    }
    if (exact != null && exact.size() > EXACT) {
      bits = new long[1 << (BITS - 6)];
      exact.forEach(this::mark);
      exact = null;
    }
  }

  /** Marks a name; false when all its marks were there. */
  private boolean mark(String name) {
    long hash = mix(ByDistributions.seed(name));
    boolean fresh = false;
    for (int i = 0; i < HASHES; i++) {
      int bit = (int) (hash >>> (64 - BITS));
      long mask = 1L << bit;
      fresh |= (bits[bit >>> 6] & mask) == 0;
      bits[bit >>> 6] |= mask;
      hash = mix(hash);
    }
    return fresh;
  }

  private static long mix(long value) {
    long z = (value ^ (value >>> 32)) * 0x9e3779b97f4a7c15L;
    z = (z ^ (z >>> 29)) * 0xbf58476d1ce4e5b9L;
    return z ^ (z >>> 32);
  }

  /** Names that may occur twice or more; every one that does is here, up to the limit. */
  Set<String> repeated() {
    return repeated;
  }
}
