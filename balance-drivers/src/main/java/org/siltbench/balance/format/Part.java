package org.siltbench.balance.format;

import org.siltbench.calc.reason.Unfit;

/** One part of a line, read from left to right without going back. */
public sealed interface Part {

  /** This exact text. */
  record Text(String text) implements Part {
    /** Refuses no text. */
    public Text {
      if (text.isEmpty()) {
        throw new Unfit(FormatFileSays.TEXT_PART);
      }
    }
  }

  /** Any number of spaces and tabs, also none. */
  record Blanks() implements Part {}

  /** At least one space or tab. */
  record Gap() implements Part {}

  /** A plus or a minus sign, or nothing. */
  record Sign() implements Part {}

  /** Digits with at most one decimal mark. */
  record Numeral() implements Part {}

  /** One of the format's unit texts. */
  record UnitField(boolean optional) implements Part {}

  /** One of the format's mark texts; the longest that fits. */
  record MarkField() implements Part {}

  /** A run of digits that is no mass: a counter, a number of the balance. */
  record Digits() implements Part {}

  /** A run of characters other than blank, comma and semicolon, that does not begin with a sign. */
  record Word() implements Part {}

  /** Exactly so many characters, whatever they are. */
  record Any(int count) implements Part {
    /** Refuses a count that no line has. */
    public Any {
      if (count < 1 || count > LineReader.MAX_LINE) {
        throw new Unfit(FormatFileSays.ANY_COUNT, LineReader.MAX_LINE);
      }
    }
  }

  /** Two hex digits that must agree with the bytes of the line before them. */
  record Check(Sum sum, int from) implements Part {
    /** Refuses a start before the line. */
    public Check {
      if (from < 0 || from > LineReader.MAX_LINE) {
        throw new Unfit(FormatFileSays.CHECK_FROM);
      }
    }
  }

  /** How a check is computed, modulo 256. */
  enum Sum {
    /** Exclusive or of the bytes. */
    XOR("xor"),
    /** Sum of the bytes. */
    ADD("add"),
    /** Two's complement of the sum. */
    NEGATED("negated");

    private final String word;

    Sum(String word) {
      this.word = word;
    }

    /** The word in the file. */
    public String word() {
      return word;
    }

    /** The check of the bytes from {@code from} to before {@code to}. */
    public int of(byte[] bytes, int from, int to) {
      int sum = 0;
      for (int i = from; i < to; i++) {
        sum = this == XOR ? sum ^ bytes[i] : sum + bytes[i];
      }
      return (this == NEGATED ? -sum : sum) & 0xFF;
    }
  }
}
