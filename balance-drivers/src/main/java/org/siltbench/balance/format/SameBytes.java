package org.siltbench.balance.format;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The bytes that every line of one layout has in the same places, compared eight at a time. */
final class SameBytes {

  private final int[] places;
  private final long[] texts;
  private final long[] masks;

  private SameBytes(int[] places, long[] texts, long[] masks) {
    this.places = places;
    this.texts = texts;
    this.masks = masks;
  }

  /** Takes those bytes of a line that are marked; null if none is. */
  static @Nullable SameBytes of(byte[] bytes, int from, boolean[] marked) {
    int[] places = new int[marked.length];
    int words = 0;
    for (int i = 0; i < marked.length; i += marked[i] ? Long.BYTES : 1) {
      if (marked[i]) {
        places[words++] = i;
      }
    }
    long[] masks = new long[words];
    Arrays.setAll(masks, i -> mask(marked, places[i]));
    long[] texts = new long[words];
    Arrays.setAll(texts, i -> Words.at(bytes, from + places[i]) & masks[i]);
    return words == 0 ? null : new SameBytes(Arrays.copyOf(places, words), texts, masks);
  }

  /** Which of the eight bytes from a place on are marked. */
  static long mask(boolean[] marked, int place) {
    long mask = 0;
    for (int i = 0; i < Long.BYTES && place + i < marked.length; i++) {
      mask |= marked[place + i] ? 0xFFL << (i * Byte.SIZE) : 0;
    }
    return mask;
  }

  /** Whether a line has them too, which begins at {@code from} and has eight bytes behind it. */
  boolean in(byte[] bytes, int from) {
    long different = 0;
    for (int i = 0; i < places.length; i++) {
      different |= (Words.inside(bytes, from + places[i]) ^ texts[i]) & masks[i];
    }
    return different == 0;
  }
}
