package org.siltbench.station.work.receipt;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.siltbench.calc.uncertainty.StandardUncertainty;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;

/**
 * The filtered volume: the portions poured less what was left, or one volume alone, never both. A
 * volume given as a range becomes its middle with the uncertainty of a rectangle.
 */
final class VolumeCells {

  private static final BigDecimal LEAST = BigDecimal.ONE;
  private static final BigDecimal MOST = BigDecimal.valueOf(10_000);
  private static final int U_DIGITS = 6;
  private static final Pattern RANGE =
      Pattern.compile("(\\d+(?:[.,]\\d+)?) ?(?:-|–|\\.\\.) ?(\\d+(?:[.,]\\d+)?)");
  private static final Pattern UNIT = Pattern.compile("(?i)[\\d.,]+ *(ml|l|litres?|liters?|cl)");
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?|\\.\\d+");

  private final Table table;
  private final Row row;
  private final Map<String, String> columns;

  private VolumeCells(Table table, Row row, Map<String, String> columns) {
    this.table = table;
    this.row = row;
    this.columns = columns;
  }

  static void into(Table table, Row row, Map<String, String> columns) {
    new VolumeCells(table, row, columns).take();
  }

  private void take() {
    ReceiptReader.put(
        columns, "taken", ReceiptReader.word(table, row, "taken", Set.of("aliquot", "whole")));
    String leftTo = ReceiptReader.word(table, row, "left_to", Set.of("discarded", "next"));
    ReceiptReader.put(columns, "left_to", leftTo);
    boolean portions = !row.text("portions_ml").isEmpty();
    boolean stated = !row.text("volume_ml").isEmpty();
    if (portions && stated) {
      throw row.wrong(Said.of(ReceiptSays.BOTH_VOLUMES));
    }
    if (portions) {
      portions();
    } else if (!row.text("left_ml").isEmpty()) {
      throw row.wrong(Said.of(ReceiptSays.LEFT_ALONE));
    } else if (stated) {
      stated();
    }
    statedUncertainty();
  }

  private void portions() {
    int column = table.column("portions_ml");
    List<String> parts = new ArrayList<>();
    BigDecimal sum = BigDecimal.ZERO;
    for (String part : row.text(column).split("[+\\s]+")) {
      BigDecimal poured = volume(column, part);
      sum = sum.add(poured);
      parts.add(poured.toPlainString());
    }
    columns.put("portions_ml", String.join("+", parts));
    BigDecimal filtered = sum.subtract(left(sum));
    requireSensible(column, filtered);
  }

  private BigDecimal left(BigDecimal poured) {
    int column = table.column("left_ml");
    Words expected = Said.of(ReceiptSays.LEFT, poured.toPlainString());
    if (row.text(column).isEmpty()) {
      return BigDecimal.ZERO;
    }
    BigDecimal left = new BigDecimal(row.decimal(column, expected).orElse("0"));
    if (left.signum() < 0 || left.compareTo(poured) >= 0) {
      throw row.wrong(column, expected);
    }
    columns.put("left_ml", left.toPlainString());
    return left;
  }

  private void stated() {
    int column = table.column("volume_ml");
    Matcher range = RANGE.matcher(row.text(column));
    if (range.matches()) {
      range(column, range);
      return;
    }
    BigDecimal volume = volume(column, row.text(column));
    requireSensible(column, volume);
    columns.put("volume_ml", volume.toPlainString());
  }

  private void range(int column, Matcher range) {
    BigDecimal low = volume(column, range.group(1));
    BigDecimal high = volume(column, range.group(2));
    if (high.compareTo(low) <= 0) {
      throw row.wrong(column, Said.of(ReceiptSays.RANGE));
    }
    requireSensible(column, low);
    requireSensible(column, high);
    BigDecimal two = BigDecimal.valueOf(2);
    columns.put("volume_ml", low.add(high).divide(two).toPlainString());
    columns.put("volume_range_ml", low.toPlainString() + ".." + high.toPlainString());
    putUncertainty(StandardUncertainty.rectangular(high.subtract(low).doubleValue() / 2));
  }

  private void statedUncertainty() {
    int column = table.column("volume_u_ml");
    row.decimal(column, Said.of(ReceiptSays.UNCERTAINTY), "0", "1000")
        .ifPresent(u -> putUncertainty(Math.hypot(u.doubleValue(), known())));
  }

  private double known() {
    return Double.parseDouble(columns.getOrDefault("volume_u_ml", "0"));
  }

  private void putUncertainty(double u) {
    BigDecimal rounded = new BigDecimal(u, new MathContext(U_DIGITS, RoundingMode.HALF_UP));
    columns.put("volume_u_ml", rounded.stripTrailingZeros().toPlainString());
  }

  private BigDecimal volume(int column, String text) {
    if (UNIT.matcher(text).matches()) {
      throw row.wrong(column, Said.of(ReceiptSays.PLAIN_NUMBER));
    }
    if (NUMBER.matcher(text).matches()) {
      return new BigDecimal(text);
    }
    if (text.equals(row.text(column))) {
      return new BigDecimal(row.decimal(column, Said.of(ReceiptSays.VOLUME)).orElse("0"));
    }
    throw row.wrong(column, Said.of(ReceiptSays.VOLUMES));
  }

  private void requireSensible(int column, BigDecimal volume) {
    if (volume.signum() <= 0) {
      throw row.wrong(column, Said.of(ReceiptSays.ABOVE_ZERO));
    }
    if (volume.compareTo(LEAST) < 0) {
      throw row.wrong(column, Said.of(ReceiptSays.LITRES));
    }
    if (volume.compareTo(MOST) > 0) {
      throw row.wrong(column, Said.of(ReceiptSays.TOO_MUCH));
    }
  }
}
