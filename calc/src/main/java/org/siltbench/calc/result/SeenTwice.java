package org.siltbench.calc.result;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/**
 * Finds names that may occur more than once, in memory that stays below about 40 MB: by a 64-bit
 * hash of each for the first names, then by a fixed table of bits (a Bloom filter). It may name a
 * few that occur once but misses none that occurs twice.
 */
final class SeenTwice {

  private static final int TOGETHER = 128;
  private static final int FIRST = 200_000;
  private static final int BITS = 28;

  /** A name's marks lie in one block, so that they cost one look into distant memory. */
  private static final int WORDS_IN_BLOCK = 8;

  private static final int HASHES = 4;
  private static final int BITS_OF_PLACE = 9;

  private final int mostRepeated;
  private final Set<String> repeated = new HashSet<>();
  private final String[] names = new String[TOGETHER];
  private final long[] hashes = new long[TOGETHER];
  private int waiting;
  private int[] tags = new int[1 << 10];
  private long[] known = new long[1 << 9];
  private int count;
  private long[] bits = new long[0];

  /**
   * @param mostRepeated how many repeated names to keep at most
   */
  SeenTwice(int mostRepeated) {
    this.mostRepeated = mostRepeated;
  }

  void add(String name) {
    names[waiting] = name;
    hashes[waiting++] = mix(ByDistributions.seed(name)) | 1;
    if (waiting == TOGETHER) {
      look();
    }
  }

  /** Looks up what waits, all at once: the looks into distant memory then overlap. */
  private void look() {
    for (int i = 0; i < waiting; i++) {
      boolean before = bits.length == 0 ? !insert(hashes[i]) : !mark(hashes[i]);
      if (before && repeated.size() < mostRepeated) {
        repeated.add(names[i]);
      }
    }
    waiting = 0;
    if (count > FIRST) {
      turnToBits();
    }
  }

  private void turnToBits() {
    bits = new long[1 << (BITS - 6)];
    for (int i = 0; i < count; i++) {
      mark(known[i]);
    }
    known = new long[0];
    tags = new int[0];
    count = 0;
  }

  /** Puts a hash into the open table, at most half full; false when it was there. */
  private boolean insert(long hash) {
    if (2 * count >= tags.length) {
      grow();
    }
    if (!tag(hash)) {
      return false;
    }
    known[count++] = hash;
    return true;
  }

  private void grow() {
    tags = new int[4 * tags.length];
    known = Arrays.copyOf(known, tags.length / 2);
    for (int i = 0; i < count; i++) {
      tag(known[i]);
    }
  }

  /**
   * A tag is the half of a hash that does not tell its place, so that two names are taken for one
   * as seldom as by the whole hash, in a table of half the size.
   */
  private boolean tag(long hash) {
    int tag = (int) hash;
    int last = tags.length - 1;
    int at = (int) (hash >>> 33) & last;
    while (tags[at] != 0) {
      if (tags[at] == tag) {
        return false;
      }
      at = (at + 1) & last;
    }
    tags[at] = tag;
    return true;
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
    look();
    return repeated;
  }
}
