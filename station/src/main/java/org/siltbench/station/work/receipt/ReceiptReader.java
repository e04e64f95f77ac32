package org.siltbench.station.work.receipt;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.siltbench.calc.result.Fraction;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Role;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.table.Row;
import org.siltbench.station.table.Table;
import org.siltbench.station.work.scan.BagScan;

/**
 * Reads the receipt table; the first cell that makes no sense ends it, with its line and column.
 */
public final class ReceiptReader {

  /** The columns of the table; only {@code filter} must be there. */
  public static final List<String> COLUMNS =
      List.of(
          "filter",
          "sample",
          "role",
          "pair",
          "pair_kind",
          "filter_order",
          "site",
          "collected",
          "filtered_from",
          "filtered_to",
          "taken",
          "portions_ml",
          "left_ml",
          "left_to",
          "volume_ml",
          "volume_u_ml",
          "rinse",
          "condition",
          "gauge_m",
          "water_c",
          "conductivity_us_cm",
          "remarks",
          "by",
          "part",
          "expected_mg_l",
          "expected_u_mg_l");

  /** What the field sheet fills in by itself. */
  private static final Set<String> PRINTED = Set.of("filter", "role", "filter_order", "taken");

  private static final int MAX_ROWS = 100_000;
  private static final int MAX_TEXT = 2000;
  private static final Set<String> PAIR_KINDS =
      Set.of("field-replicate", "bottle-split", "re-weigh");

  private final Clock clock;

  public ReceiptReader(Clock clock) {
    this.clock = clock;
  }

  /** All lines that are not blank. */
  public ReceiptTable read(Path file) throws IOException {
    try (Table table = Table.open(file)) {
      return read(table);
    }
  }

  /**
   * The same from text that was made from a file, line by line.
   *
   * @param file what messages call it
   */
  public ReceiptTable read(Path file, String text) throws IOException {
    try (Table table = Table.of(file, text)) {
      return read(table);
    }
  }

  private ReceiptTable read(Table table) {
    table.require("filter");
    refuseStrangeColumns(table);
    List<ReceiptRow> rows = new ArrayList<>();
    List<String> unused = new ArrayList<>();
    while (table.hasNext()) {
      Row row = table.next();
      if (row.blank()) {
        continue;
      }
      ReceiptRow read = read(table, row);
      if (untouched(row)) {
        unused.add(read.filter());
      } else {
        rows.add(read);
      }
      if (rows.size() > MAX_ROWS) {
        throw new Problem.WrongUse(ReceiptSays.TOO_LONG, MAX_ROWS);
      }
    }
    return new ReceiptTable(rows, unused);
  }

  private static void refuseStrangeColumns(Table table) {
    for (String name : table.columns()) {
      boolean ours = COLUMNS.contains(name.toLowerCase(Locale.ROOT));
      if (!ours && (name.endsWith("_ml") || name.endsWith("_l"))) {
        throw new Problem.WrongUse(ReceiptSays.VOLUME_COLUMN, name);
      }
    }
  }

  /**
   * A line of the field sheet on which nothing was written but the ID: the filter stayed unused.
   */
  private static boolean untouched(Row row) {
    for (String column : COLUMNS) {
      if (!PRINTED.contains(column) && !row.text(column).isEmpty()) {
        return false;
      }
    }
    return !row.text("role").equals(Role.TRIP_BLANK.code());
  }

  private ReceiptRow read(Table table, Row row) {
    Map<String, String> columns = new LinkedHashMap<>();
    BagScan bag = bag(table, row);
    put(columns, "sample", row.text("sample"));
    put(columns, "role", role(table, row));
    pair(table, row, columns);
    row.decimal(table.column("filter_order"), Said.of(ReceiptSays.WHOLE), "1", "99")
        .ifPresent(n -> columns.put("filter_order", Integer.toString(whole(table, row, n))));
    put(columns, "site", row.text("site"));
    new TimeCells(clock, table, row).into(columns);
    VolumeCells.into(table, row, columns);
    put(columns, "rinse", word(table, row, "rinse", Set.of("yes", "no")));
    List<Condition> conditions = conditions(table, row);
    put(columns, "condition", String.join("+", conditions.stream().map(Condition::code).toList()));
    measured(table, row, columns);
    put(columns, "remarks", limited(table, row, "remarks"));
    put(columns, "by", limited(table, row, "by"));
    part(table, row, columns);
    number(table, row, columns, "expected_mg_l", "0", "1000000");
    number(table, row, columns, "expected_u_mg_l", "0", "1000000");
    return new ReceiptRow(row.line(), bag, conditions, columns);
  }

  private static BagScan bag(Table table, Row row) {
    int column = table.column("filter");
    if (row.text(column).isEmpty()) {
      throw row.wrong(column, Said.of(ReceiptSays.FILTER_ID));
    }
    try {
      return BagScan.of(row.text(column));
    } catch (Problem.Refused e) {
      throw new Problem.Refused(
          ReceiptSays.LINE, table.file(), row.line(), e.happened(), (Words) e::safe, e.wayOut());
    }
  }

  private static void part(Table table, Row row, Map<String, String> columns) {
    Set<String> words = new TreeSet<>();
    for (Fraction fraction : Fraction.values()) {
      words.add(fraction.word());
    }
    String part = word(table, row, "part", words);
    put(columns, "part", part);
    Fraction fraction = Fraction.of(part);
    boolean water = columns.containsKey("volume_ml") || columns.containsKey("portions_ml");
    if (fraction != null && fraction.isSand() && water) {
      throw row.wrong(Said.of(ReceiptSays.SAND));
    }
  }

  private static int whole(Table table, Row row, java.math.BigDecimal number) {
    try {
      return number.intValueExact();
    } catch (ArithmeticException e) {
      throw row.wrong(table.column("filter_order"), Said.of(ReceiptSays.WHOLE));
    }
  }

  private static String role(Table table, Row row) {
    String text = row.text("role").toLowerCase(Locale.ROOT);
    if (!text.isEmpty()) {
      try {
        Role.of(text);
      } catch (IllegalArgumentException e) {
        throw row.wrong(table.column("role"), Said.of(ReceiptSays.ROLE));
      }
    }
    return text;
  }

  private static void pair(Table table, Row row, Map<String, String> columns) {
    put(columns, "pair", row.text("pair"));
    String kind = word(table, row, "pair_kind", PAIR_KINDS);
    if (!kind.isEmpty() && row.text("pair").isEmpty()) {
      throw row.wrong(Said.of(ReceiptSays.PAIR_KIND));
    }
    put(columns, "pair_kind", kind);
  }

  static String word(Table table, Row row, String column, Set<String> allowed) {
    String text = row.text(column).toLowerCase(Locale.ROOT);
    if (!text.isEmpty() && !allowed.contains(text)) {
      throw row.wrong(
          table.column(column),
          Said.of(ReceiptSays.ONE_OF, String.join(", ", allowed.stream().sorted().toList())));
    }
    return text;
  }

  private static List<Condition> conditions(Table table, Row row) {
    List<Condition> out = new ArrayList<>();
    for (String word : row.text("condition").split("[+/]")) {
      if (!word.isBlank()) {
        out.add(
            Condition.of(word)
                .orElseThrow(() -> row.wrong(table.column("condition"), conditionWords())));
      }
    }
    return out;
  }

  private static Words conditionWords() {
    List<String> words = new ArrayList<>();
    for (Condition condition : Condition.values()) {
      words.add(condition.code());
    }
    return Said.of(ReceiptSays.CONDITIONS, String.join(", ", words));
  }

  private static void measured(Table table, Row row, Map<String, String> columns) {
    number(table, row, columns, "gauge_m", "-50", "1000");
    number(table, row, columns, "water_c", "-5", "60");
    number(table, row, columns, "conductivity_us_cm", "0", "500000");
  }

  private static void number(
      Table table, Row row, Map<String, String> columns, String name, String least, String most) {
    row.decimal(table.column(name), Said.of(ReceiptSays.NUMBER), least, most)
        .ifPresent(value -> columns.put(name, value.toPlainString()));
  }

  private static String limited(Table table, Row row, String column) {
    String text = row.text(column);
    if (text.length() > MAX_TEXT) {
      throw row.wrong(table.column(column), Said.of(ReceiptSays.TEXT, MAX_TEXT));
    }
    return text;
  }

  static void put(Map<String, String> columns, String name, String value) {
    if (!value.isEmpty()) {
      columns.put(name, value);
    }
  }
}
