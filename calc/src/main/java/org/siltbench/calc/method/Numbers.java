package org.siltbench.calc.method;

import java.math.BigDecimal;
import org.siltbench.calc.quantity.Mass;

/** Plain decimal numbers of a method's text. */
final class Numbers {

  private static final int MAX_TEXT = 30;

  private Numbers() {}

  /** A plain decimal within a closed range; "inf" is infinity. */
  static double within(String text, double low, double high) {
    double value = text.equals("inf") ? Double.POSITIVE_INFINITY : decimal(text).doubleValue();
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(text);
    }
    return value;
  }

  static BigDecimal decimal(String text) {
    if (text.length() > MAX_TEXT || !text.matches("[+-]?\\d+(\\.\\d+)?")) {
      throw new IllegalArgumentException(text);
    }
    return new BigDecimal(text);
  }

  static Mass mass(String text, double low, double high) {
    within(text, low, high);
    return Mass.ofMilligrams(text);
  }

  static Span span(String text, double low, double high) {
    String[] ends = text.split("\\s+to\\s+");
    if (ends.length != 2) {
      throw new IllegalArgumentException(text);
    }
    return new Span(within(ends[0], low, high), within(ends[1], low, high));
  }

  /** The shortest plain decimal that reads back to the same number. */
  static String plain(double value) {
    if (Double.isInfinite(value)) {
      return "inf";
    }
    String text = new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    return text.equals("-0") ? "0" : text;
  }
}
