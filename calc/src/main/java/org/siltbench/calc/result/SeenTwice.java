package org.siltbench.calc.result;

import java.util.HashSet;
import java.util.Set;

/**
 * Finds names that may occur more than once, in memory that stays below about 40 MB: by a 64-bit
 * hash of each for the first names, then by a fixed table of bits (a Bloom filter). It may name a
 * few that occur once but misses none that occurs twice.
 */
final class SeenTwice {

  private static final int FIRST = 200_000;
  private static final int BITS = 28;

  /** A name's marks lie in one block, so that they cost one look into distant memory. */
  private static final int WORDS_IN_BLOCK = 8;

  private static final int HASHES = 4;
  private static final int BITS_OF_PLACE = 9;

  private final int mostRepeated;
  private final Set<String> repeated = new HashSet<>();
  private long[] slots = new long[1 << 10];
  private int count;
  private long[] bits = new long[0];

  /**
   * @param mostRepeated how many repeated names to keep at most
   */
  SeenTwice(int mostRepeated) {
    this.mostRepeated = mostRepeated;
  }

  void add(String name) {
    long hash = mix(ByDistributions.seed(name)) | 1;
    boolean before = bits.length == 0 ? !insert(hash) : !mark(hash);
    if (before && repeated.size() < mostRepeated) {
      repeated.add(name);
    }
    if (count > FIRST) {
      bits = new long[1 << (BITS - 6)];
      for (long slot : slots) {
        if (slot != 0) {
          mark(slot);
        }
      }
      slots = new long[0];
      count = 0;
    }
  }

  /** Puts a hash into the open table, at most half full; false when it was there. */
  private boolean insert(long hash) {
    if (2 * count >= slots.length) {
      grow();
    }
    int at = place(slots, hash);
    if (slots[at] == hash) {
      return false;
    }
    slots[at] = hash;
    count++;
    return true;
  }

  private void grow() {
    long[] larger = new long[2 * slots.length];
    for (long slot : slots) {
      if (slot != 0) {
        larger[place(larger, slot)] = slot;
      }
    }
    slots = larger;
  }

  private static int place(long[] table, long hash) {
    int at = (int) (hash >>> 33) & (table.length - 1);
    while (table[at] != 0 && table[at] != hash) {
      at = (at + 1) & (table.length - 1);
    }
    return at;
  }

  /** Marks a hash; false when all its marks were there. */
  private boolean mark(long hash) {
    int block = (int) (hash >>> (64 - BITS + BITS_OF_PLACE)) * WORDS_IN_BLOCK;
    long places = hash * 0x9e3779b97f4a7c15L;
    boolean fresh = false;
    for (int i = 0; i < HASHES; i++) {
      int place = (int) (places >>> (64 - BITS_OF_PLACE));
      int word = block + (place >>> 6);
      long mask = 1L << place;
      fresh |= (bits[word] & mask) == 0;
      bits[word] |= mask;
      places <<= BITS_OF_PLACE;
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
