package org.siltbench.station.table;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** One line of a table. Columns are named by their place, or -1 for one that is not there. */
public final class Row {

  private static final Pattern PLAIN = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)");
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d*,\\d+");
  private static final Pattern THOUSANDS = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");
  private static final int MAX_NUMBER = 40;
  private static final int SHOWN = 40;

  private final Header header;
  private final long line;
  private final List<String> cells;

  Row(Header header, long line, List<String> cells) {
    this.header = header;
    this.line = line;
    this.cells = cells;
  }

  /**
   * Too few cells are filled up with nothing if the missing ones are at the end; too many are an
   * error.
   */
  Row checked() {
    int expected = header.names().size();
    if (cells.size() > expected) {
      for (int i = expected; i < cells.size(); i++) {
        if (!cells.get(i).isBlank()) {
          throw new Problem.WrongUse(TableSays.NO_COLUMN_FOR_CELL, place(i), expected);
        }
      }
    }
    return this;
  }

  /** The line of the file it starts on, from 1. */
  public long line() {
    return line;
  }

  /** A cell without blanks around; empty if the column is not there. */
  public String text(int column) {
    return column < 0 || column >= cells.size() ? "" : cells.get(column).strip();
  }

  /** A cell by its column's name. */
  public String text(String column) {
    return text(header.indexOf(column));
  }

  /** All cells as they stand, as many as there are columns. */
  public List<String> cells() {
    int expected = header.names().size();
    if (cells.size() == expected) {
      return cells;
    }
    return java.util.stream.IntStream.range(0, expected).mapToObj(this::raw).toList();
  }

  private String raw(int column) {
    return column < cells.size() ? cells.get(column) : "";
  }

  /** True if a comma can be a decimal mark in this table. */
  public boolean decimalComma() {
    return header.decimalComma();
  }

  /** True if every cell is blank. */
  public boolean blank() {
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
        return false;
      }
    }
    return true;
  }

  /**
   * A decimal number as plain text with a point, or empty for an empty cell. A decimal comma is
   * read where cells are not separated by commas, unless it could stand for thousands.
   *
   * @param expected what should stand there, for the message
   */
  public Optional<String> decimal(int column, String expected) {
    return decimal(column, Words.verbatim(expected));
  }

  /** The same, in the person's language. */
  public Optional<String> decimal(int column, Words expected) {
    String text = text(column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(number(column, text, expected));
  }

  private String number(int column, String text, Words expected) {
    String digits = text.replace('\u2212', '-');
    if (digits.length() <= MAX_NUMBER && PLAIN.matcher(digits).matches()) {
      return digits.startsWith("+") ? digits.substring(1) : digits;
    }
    if (header.decimalComma() && COMMA.matcher(digits).matches()) {
      if (THOUSANDS.matcher(digits).matches()) {
        throw wrong(column, Said.of(TableSays.WITH_POINT, expected));
      }
      return digits.replace(',', '.');
    }
    throw wrong(column, expected);
  }

  /** The same within limits, in English. */
  public Optional<BigDecimal> decimal(int column, String expected, String least, String most) {
    return decimal(column, Words.verbatim(expected), least, most);
  }

  /** A number within limits, both included. */
  public Optional<BigDecimal> decimal(int column, Words expected, String least, String most) {
    Optional<BigDecimal> number = decimal(column, expected).map(BigDecimal::new);
    if (number.isPresent()
        && (number.get().compareTo(new BigDecimal(least)) < 0
            || number.get().compareTo(new BigDecimal(most)) > 0)) {
      throw wrong(column, Said.of(TableSays.FROM_TO, expected, least, most));
    }
    return number;
  }

  /** The problem of a cell: where, what was expected, what stands there. */
  public Problem.WrongUse wrong(int column, String expected) {
    return wrong(column, Words.verbatim(expected));
  }

  /** The same, in the person's language. */
  public Problem.WrongUse wrong(int column, Words expected) {
    return new Problem.WrongUse(TableSays.CELL, place(column), shown(text(column)), expected);
  }

  /** The problem of the line as a whole. */
  public Problem.WrongUse wrong(Words what) {
    return new Problem.WrongUse(TableSays.LINE, header.file(), line, what);
  }

  private Words place(int column) {
    String name = column >= 0 && column < header.names().size() ? header.names().get(column) : "";
    return name.isEmpty()
        ? Said.of(TableSays.PLACE, header.file(), line, column + 1)
        : Said.of(TableSays.PLACE_NAMED, header.file(), line, column + 1, name);
  }

  private static String shown(String text) {
    return text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text;
  }
}
