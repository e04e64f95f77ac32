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

  static final long SPACES = 0x2020202020202020L;
  private static final long ZEROS = 0x3030303030303030L;
  private static final long TO_TOP = 0x7676767676767676L;
  private static final long TOPS = 0x8080808080808080L;
  private static final long ONES = 0x0101010101010101L;
  private static final long PAIRS = 0x00FF00FF00FF00FFL;
  private static final long FOURS = 0x0000FFFF0000FFFFL;

  // So many times a place goes to the place behind it, where it meets that place taken once.
  private static final long TEN_AND_ONE = (10L << 8) + 1;
  private static final long HUNDRED_AND_ONE = (100L << 16) + 1;
  private static final long TEN_THOUSAND_AND_ONE = (10_000L << 32) + 1;

  private Words() {}

  /** The bytes from {@code at} on; those beyond the array are zero. */
  static long at(byte[] bytes, int at) {
    return at + Long.BYTES <= bytes.length ? inside(bytes, at) : tail(bytes, at);
  }

  /** The same where there are eight bytes. */
  static long inside(byte[] bytes, int at) {
    return (long) LONG.get(bytes, at);
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
    long value = values(word);
    // a byte that is no digit gets its top bit; what it carries over goes to later bytes only
    return Long.numberOfTrailingZeros(((value + TO_TOP) | value) & TOPS) >>> 3;
  }

  /**
   * How many bits the digits take that end the word, eight each; of a word with a byte that is no
   * ASCII before them, perhaps eight less.
   */
  static int bitsOfLastDigits(long word) {
    long value = values(word);
    return Long.numberOfLeadingZeros(((value + TO_TOP) | value) & TOPS);
  }

  /** The digits of the word as the numbers they stand for. */
  static long values(long word) {
    return word ^ ZEROS;
  }

  /** Whether all bytes are numbers from 0 to 9. */
  static boolean areDigits(long values) {
    return (((values + TO_TOP) | values) & TOPS) == 0;
  }

  /** The number that the first so many bytes of the word write; they are one to eight digits. */
  static long number(long word, int digits) {
    return number(values(word) << (Long.SIZE - digits * Byte.SIZE));
  }

  /** The number of eight digits, the first one in the lowest byte. */
  static long number(long values) {
    long pairs = ((values * TEN_AND_ONE) >>> 8) & PAIRS;
    long fours = ((pairs * HUNDRED_AND_ONE) >>> 16) & FOURS;
    return (fours * TEN_THOUSAND_AND_ONE) >>> 32;
  }

  static boolean isDigit(byte b) {
    return b >= '0' && b <= '9';
  }

  /** The top bit of each place where such a byte stands; above the lowest, of some others too. */
  static long some(long word, long eightTimes) {
    long other = word ^ eightTimes;
    return (other - ONES) & ~other & TOPS;
  }

  /** A byte in all eight places. */
  static long eightTimes(byte b) {
    return (b & 0xFF) * ONES;
  }
}
