package org.siltbench.labels.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A linear axis with round ticks: values from low to high, laid from one position to another. */
record Scale(double low, double high, double step, double from, double to) {

  /** An axis that covers two values with about a number of steps. */
  static Scale covering(double least, double most, int steps, double from, double to) {
    double span = most > least ? most - least : Math.max(1e-6, Math.abs(most) * 0.2 + 1e-3);
    double step = round(span / steps);
    double low = Math.floor(least / step + 1e-9) * step;
    double high = Math.ceil(most / step - 1e-9) * step;
    return new Scale(low, high > low ? high : low + step, step, from, to);
  }

  /** The next of 1, 2, 5 times a power of ten. */
  private static double round(double rough) {
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double digit = rough / power;
    if (digit <= 1) {
      return power;
    }
    if (digit <= 2) {
      return 2 * power;
    }
    return digit <= 5 ? 5 * power : 10 * power;
  }

  double at(double value) {
    return from + (value - low) / (high - low) * (to - from);
  }

  List<Double> ticks() {
    List<Double> out = new ArrayList<>();
    int count = (int) Math.round((high - low) / step);
    for (int i = 0; i <= count; i++) {
      out.add(low + i * step);
    }
    return out;
  }

  /** A tick in as many decimals as the step needs, with a true minus sign. */
  String text(double tick) {
    int places = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    BigDecimal value = BigDecimal.valueOf(tick).setScale(places, RoundingMode.HALF_UP);
    String text = value.signum() == 0 ? value.abs().toPlainString() : value.toPlainString();
    return text.replace('-', '−');
  }
}
