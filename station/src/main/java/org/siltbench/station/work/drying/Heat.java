package org.siltbench.station.work.drying;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Span;
import org.siltbench.station.said.Said;

/**
 * What the thermometer said.
 *
 * @param celsius the temperature; null if nobody looked
 * @param thermometer which thermometer, or empty
 */
public record Heat(@Nullable BigDecimal celsius, String thermometer) {

  /** Nobody looked. */
  public static final Heat UNKNOWN = new Heat(null, "");

  /** What speaks against it under the methods of these filters; empty if nothing does. */
  Optional<Said> fault(Collection<Heated> filters, Purpose purpose) {
    BigDecimal shown = celsius;
    if (shown == null) {
      return Optional.empty();
    }
    for (Heated one : filters) {
      Span range = purpose.range(one.method());
      if (!range.contains(shown.doubleValue())) {
        return Optional.of(
            Said.of(
                DryingSays.OUT_OF_RANGE,
                shown.toPlainString(),
                one.method().key(),
                plain(range.low()),
                plain(range.high())));
      }
    }
    return Optional.empty();
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
