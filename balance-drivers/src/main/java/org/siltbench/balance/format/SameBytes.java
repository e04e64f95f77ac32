package org.siltbench.balance.format;

/**
 * The bytes that every line of one layout has in the same places, compared eight at a time. Most
 * layouts need two words or one: these are no array.
 */
final class SameBytes {

  private static final int FEW = 2;

  private final int firstAt;
  private final long firstText;
  private final long firstMask;
  private final int secondAt;
  private final long secondText;
  private final long secondMask;
  private final int count;
  private final int[] places;
  private final long[] texts;
  private final long[] masks;

  /** Takes those bytes of a line that are marked. */
  SameBytes(byte[] bytes, int from, boolean[] marked) {
    places = new int[marked.length + FEW];
    texts = new long[places.length];
    masks = new long[places.length];
    int words = 0;
    for (int i = 0; i < marked.length; i += marked[i] ? Long.BYTES : 1) {
      if (marked[i]) {
        places[words] = i;
        masks[words] = mask(marked, i);
        texts[words] = Words.at(bytes, from + i) & masks[words];
        words++;
      }
    }
    count = words;
    firstAt = places[0];
    firstText = texts[0];
    firstMask = masks[0];
    secondAt = places[1];
    secondText = texts[1];
    secondMask = masks[1];
  }

  private static long mask(boolean[] marked, int place) {
    long mask = 0;
    for (int i = 0; i < Long.BYTES && place + i < marked.length; i++) {
      mask |= marked[place + i] ? 0xFFL << (i * Byte.SIZE) : 0;
    }
    return mask;
  }

  /** Whether a line has them too, which begins at {@code from} and has eight bytes behind it. */
  boolean in(byte[] bytes, int from) {
    long first = (Words.inside(bytes, from + firstAt) ^ firstText) & firstMask;
    long second = (Words.inside(bytes, from + secondAt) ^ secondText) & secondMask;
    return (first | second) == 0 && (count <= FEW || more(bytes, from));
  }

  private boolean more(byte[] bytes, int from) {
    long different = 0;
    for (int i = FEW; i < count; i++) {
      different |= (Words.inside(bytes, from + places[i]) ^ texts[i]) & masks[i];
    }
    return different == 0;
  }
}
