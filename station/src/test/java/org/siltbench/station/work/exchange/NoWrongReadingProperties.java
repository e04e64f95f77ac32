package org.siltbench.station.work.exchange;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;

/**
 * Tables written in habits drawn at random: separators, decimal marks, thousands, orders of dates,
 * units, character sets. What comes out without a doubt is what was meant; every doubt that can be
 * answered leads there once it is answered truly.
 */
class NoWrongReadingProperties {

  private static final List<FilterId> IDS = BatchCode.of(new BenchCode("K3DF"), 7).filters(12);

  /** How one person writes. */
  private record Habit(
      char separator,
      boolean comma,
      String thousands,
      String dates,
      String order,
      boolean litres,
      String charset) {

    static Habit draw(Random random) {
      boolean comma = random.nextBoolean();
      String mark = comma ? "." : ",";
      String[][] dates = {
        {"dd.MM.uuuu", "day-first"},
        {"d/M/uuuu", "day-first"},
        {"M/d/uuuu", "month-first"},
        {"dd-MM-uu", "day-first"},
        {"uuuu-MM-dd", ""},
        {"d MMM uuuu", ""},
        {"uu/MM/dd", "year-first"},
      };
      String[] date = dates[random.nextInt(dates.length)];
      return new Habit(
          comma ? ";\t".charAt(random.nextInt(2)) : ";,\t|".charAt(random.nextInt(4)),
          comma,
          List.of("", mark, " ").get(random.nextInt(3)),
          date[0],
          date[1],
          random.nextBoolean(),
          List.of("UTF-8", "windows-1252", "UTF-16LE", "UTF-16BE").get(random.nextInt(4)));
    }

    String number(BigDecimal value) {
      String[] parts = value.toPlainString().split("\\.");
      String whole =
          parts[0].length() > 3
              ? parts[0].substring(0, parts[0].length() - 3)
                  + thousands
                  + parts[0].substring(parts[0].length() - 3)
              : parts[0];
      return parts.length == 1 ? whole : whole + (comma ? "," : ".") + parts[1];
    }

    List<String> truth() {
      List<String> out = new ArrayList<>();
      out.add("charset=" + charset);
      out.add("decimals=" + (comma ? "comma" : "point"));
      if (!order.isEmpty()) {
        out.add("dates=" + order);
      }
      return out;
    }
  }

  /** One line as it is meant. */
  private record Meant(String id, LocalDateTime at, BigDecimal millilitres, BigDecimal gauge) {

    static Meant draw(Random random, int line) {
      return new Meant(
          IDS.get(line).text(),
          LocalDateTime.of(2026, 1, 1, 0, 0)
              .plusDays(random.nextInt(300))
              .plusMinutes(random.nextInt(1440)),
          BigDecimal.valueOf(50 + random.nextInt(1950))
              .add(BigDecimal.valueOf(random.nextInt(10), 1)),
          BigDecimal.valueOf(100 + random.nextInt(4000), 3));
    }

    String line(Habit habit) {
      BigDecimal volume = habit.litres() ? millilitres.movePointLeft(3) : millilitres;
      String separator = String.valueOf(habit.separator());
      return String.join(
          separator,
          id,
          "Mühle",
          at.format(DateTimeFormatter.ofPattern(habit.dates(), Locale.ENGLISH)),
          at.format(DateTimeFormatter.ofPattern("H:mm")),
          quoted(habit.number(volume.stripTrailingZeros()), separator),
          quoted(habit.number(gauge.stripTrailingZeros()), separator));
    }

    private static String quoted(String cell, String separator) {
      return cell.contains(separator) ? '"' + cell + '"' : cell;
    }

    void agrees(Map<String, String> cells, Habit habit) {
      String time = at.format(DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm"));
      same(time, cells.get("collected"), habit);
      same(0, millilitres.compareTo(new BigDecimal(cells.get("volume_ml"))), habit);
      same(0, gauge.compareTo(new BigDecimal(cells.get("gauge_m"))), habit);
      same("Mühle", cells.get("site"), habit);
    }

    private void same(Object meant, Object read, Habit habit) {
      if (!meant.equals(read)) {
        throw new AssertionError("read wrong: " + read + " for " + meant + " in " + this + habit);
      }
    }
  }

  private static Preview read(Habit habit, List<Meant> lines, List<String> answers)
      throws IOException {
    Path folder = Files.createTempDirectory("messy");
    Path file = folder.resolve("notes.csv");
    try {
      StringBuilder text = new StringBuilder();
      text.append(
          String.join(
              String.valueOf(habit.separator()),
              "Filter",
              "Site",
              "Date",
              "Time",
              habit.litres() ? "Volume [L]" : "Volume [mL]",
              "Gauge height [m]"));
      lines.forEach(line -> text.append("\r\n").append(line.line(habit)));
      Files.write(file, text.toString().getBytes(Charset.forName(habit.charset())));
      return new FieldImport(folder).look(file, Answers.parse(answers));
    } finally {
      Files.delete(file);
      Files.delete(folder);
    }
  }

  @Property(tries = 400)
  void whatIsReadWithoutADoubtIsWhatWasMeant(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    Habit habit = Habit.draw(random);
    List<Meant> lines = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(IDS.size()); i++) {
      lines.add(Meant.draw(random, i));
    }
    Preview first = read(habit, lines, List.of());
    Statistics.collect(first.doubts().isEmpty() ? "read at once" : "doubted");
    if (first.doubts().isEmpty()) {
      agree(habit, lines, first);
      return;
    }
    Preview settled = read(habit, lines, habit.truth());
    Assume.that(settled.doubts().isEmpty());
    agree(habit, lines, settled);
  }

  @Property(tries = 200)
  void trueAnswersSettleEveryDoubtOfAnOrdinaryTable(@ForAll long seed) throws IOException {
    Random random = new Random(seed);
    Habit habit = Habit.draw(random);
    List<Meant> lines = new ArrayList<>();
    for (int i = 0; i < 3 + random.nextInt(6); i++) {
      lines.add(Meant.draw(random, i));
    }
    Preview settled = read(habit, lines, habit.truth());
    if (!settled.doubts().isEmpty()) {
      throw new AssertionError(settled.doubts() + " in " + habit);
    }
    agree(habit, lines, settled);
  }

  private static void agree(Habit habit, List<Meant> lines, Preview read) {
    if (read.rows().size() != lines.size()) {
      throw new AssertionError(read.rows().size() + " of " + lines.size() + " lines in " + habit);
    }
    for (int i = 0; i < lines.size(); i++) {
      lines.get(i).agrees(read.rows().get(i).cells(), habit);
    }
  }
}
