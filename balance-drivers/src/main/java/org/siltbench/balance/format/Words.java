package org.siltbench.balance.format;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Eight bytes at a time: the first byte is the lowest. Runs are counted without a branch a byte,
 * for the length of a run changes from line to line. The method for digits is common practice, from
 * memory.
 */
final class Words {

  private static final VarHandle LONG =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  private static final long SPACES = 0x2020202020202020L;
  private static final long ZEROS = 0x3030303030303030L;
  private static final long TO_TOP = 0x7676767676767676L;
  private static final long TOPS = 0x8080808080808080L;
  private static final long ONES = 0x0101010101010101L;
  private static final long PAIRS = 0x000000FF000000FFL;

  private Words() {}

  /** The bytes from {@code at} on; those beyond the array are zero. */
  static long at(byte[] bytes, int at) {
    return at + Long.BYTES <= bytes.length ? (long) LONG.get(bytes, at) : tail(bytes, at);
  }

  private static long tail(byte[] bytes, int at) {
    long word = 0;
    for (int i = bytes.length - 1; i >= at; i--) {
      word = (word << Byte.SIZE) | (bytes[i] & 0xFF);
    }
    return word;
  }

  /** The first bytes of a text, at most eight. */
  static long of(byte[] text) {
    return at(text, 0) & mask(text.length);
  }

  /** Ones in the first so many bytes. */
  static long mask(int bytes) {
    return bytes >= Long.BYTES ? -1L : (1L << (bytes * Byte.SIZE)) - 1;
  }

  /** How many spaces begin the word. */
  static int spaces(long word) {
    return Long.numberOfTrailingZeros(word ^ SPACES) >>> 3;
  }

  /** How many digits begin the word. */
  static int digits(long word) {
    long value = word ^ ZEROS;
    // a byte that is no digit gets its top bit; what it carries over goes to later bytes only
    return Long.numberOfTrailingZeros(((value + TO_TOP) | value) & TOPS) >>> 3;
  }

  /** The number that the first so many bytes of the word write; they are one to eight digits. */
  static long number(long word, int digits) {
    long pairs = (word ^ ZEROS) << (Long.SIZE - digits * Byte.SIZE);
    pairs = pairs * 10 + (pairs >>> 8);
    long low = (pairs & PAIRS) * 0x000F424000000064L;
    long high = ((pairs >>> 16) & PAIRS) * 0x0000271000000001L;
    return (low + high) >>> 32;
  }

  /** The top bit of each place where such a byte stands. */
  static long all(long word, long eightTimes) {
    long other = word ^ eightTimes;
    return ~(((other & ~TOPS) + ~TOPS) | other | ~TOPS);
  }

  /** A byte in all eight places. */
  static long eightTimes(byte b) {
    return (b & 0xFF) * ONES;
  }
}
