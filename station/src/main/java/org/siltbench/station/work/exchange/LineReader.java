package org.siltbench.station.work.exchange;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.siltbench.station.said.Said;

/** Reads one line. What could be read in two ways, or not at all, becomes a doubt. */
final class LineReader {

  private static final Pattern NOTHING =
      Pattern.compile("(?i)-+|–|—|n\\.?/?a\\.?|k\\.\\s?a\\.?|none|nan");
  private static final Pattern RANGE = Pattern.compile("(\\S+?)\\s?(?:-|–|\\.\\.)\\s?(\\S+)");

  private final List<Heading> headings;
  private final Moments moments;
  private final Dates dates;
  private final Numbers numbers;
  private final Grid.Line line;
  private final List<Doubt> doubts;
  private final Map<String, String> cells = new LinkedHashMap<>();
  private final Map<String, String> was = new LinkedHashMap<>();

  LineReader(
      List<Heading> headings,
      Moments moments,
      Dates dates,
      Numbers numbers,
      Grid.Line line,
      List<Doubt> doubts) {
    this.headings = headings;
    this.moments = moments;
    this.dates = dates;
    this.numbers = numbers;
    this.line = line;
    this.doubts = doubts;
  }

  Preview.Line read() {
    Optional<LocalDate> day = day();
    for (Heading heading : headings) {
      String raw = line.cell(heading.place());
      if (!raw.isEmpty() && !heading.column().equals(Columns.NONE)) {
        one(heading, raw, day);
      }
    }
    collected(day);
    return new Preview.Line(line.number(), cells, was);
  }

  private void one(Heading heading, String raw, Optional<LocalDate> day) {
    String column = heading.column();
    boolean text = List.of("filter", "sample", "pair", "site", "remarks", "by").contains(column);
    if (column.equals(Columns.DATE) || column.equals(Columns.TIME)) {
      return;
    }
    if (!text && NOTHING.matcher(raw).matches() && !column.equals("condition")) {
      was.put(column, raw);
    } else if (Body.MOMENTS.contains(column)) {
      moment(heading, raw, day);
    } else if (Body.NUMBERS.contains(column)) {
      number(heading, raw);
    } else if (Words.isOpen(column, raw)) {
      doubt(heading, raw, Said.of(ExchangeSays.DOUBT_SEVERAL, raw));
    } else {
      put(column, text ? raw : words(column, raw), raw);
    }
  }

  /** Several words of a condition may be joined by a plus. */
  private static String words(String column, String raw) {
    return Stream.of(raw.split(column.equals("condition") ? "[+/]" : "\\z"))
        .map(word -> Words.of(column, word.strip()))
        .collect(Collectors.joining("+"));
  }

  private void put(String column, String value, String raw) {
    cells.put(column, value);
    if (!value.equals(raw)) {
      was.put(column, raw);
    }
  }

  private Optional<Heading> heading(String column) {
    return headings.stream().filter(heading -> heading.column().equals(column)).findFirst();
  }

  private String cell(String column) {
    return heading(column).map(heading -> line.cell(heading.place())).orElse("");
  }

  private Optional<LocalDate> day() {
    String raw = cell(Columns.DATE);
    if (raw.isEmpty() || NOTHING.matcher(raw).matches()) {
      return Optional.empty();
    }
    Optional<LocalDate> day = dates.read(Moments.datePart(raw));
    boolean orderOpen = Dates.isFigures(Moments.datePart(raw)) && dates.orders().size() != 1;
    if (day.isEmpty() && !orderOpen) {
      heading(Columns.DATE).ifPresent(h -> doubt(h, raw, Said.of(ExchangeSays.DOUBT_NO_DATE, raw)));
    }
    return day;
  }

  /** From a day and a time that stand apart, unless one cell has said it. */
  private void collected(Optional<LocalDate> day) {
    String date = cell(Columns.DATE);
    String time = cell(Columns.TIME);
    if (cells.containsKey("collected") || (date.isEmpty() && time.isEmpty())) {
      return;
    }
    Optional<LocalTime> at = ClockTimes.read(time.isEmpty() ? timePart(date) : time);
    if (at.isEmpty()) {
      heading(time.isEmpty() ? Columns.DATE : Columns.TIME)
          .ifPresent(
              h ->
                  doubt(
                      h,
                      time,
                      time.isEmpty()
                          ? Said.of(ExchangeSays.DOUBT_DAY_ALONE)
                          : Said.of(ExchangeSays.DOUBT_NO_TIME, time)));
    } else if (day.isPresent()) {
      put("collected", Moments.shown(day.get(), at.get()), (date + " " + time).strip());
    } else if (date.isEmpty()) {
      heading(Columns.TIME).ifPresent(h -> doubt(h, time, Said.of(ExchangeSays.DOUBT_TIME_ALONE)));
    }
  }

  private static String timePart(String date) {
    return date.substring(Moments.datePart(date).length()).strip();
  }

  private void moment(Heading heading, String raw, Optional<LocalDate> day) {
    Optional<String> read = moments.read(raw, day);
    if (read.isPresent()) {
      put(heading.column(), read.get(), raw);
      return;
    }
    boolean orderOpen = Dates.isFigures(Moments.datePart(raw)) && dates.orders().size() != 1;
    boolean dayOpen = ClockTimes.read(raw).isPresent() && !cell(Columns.DATE).isEmpty();
    if (!orderOpen && !dayOpen) {
      doubt(heading, raw, Said.of(ExchangeSays.DOUBT_NO_MOMENT, raw));
    }
  }

  private void number(Heading heading, String raw) {
    String column = heading.column();
    String unit = CellUnit.of(raw).isEmpty() ? heading.unit() : CellUnit.of(raw);
    if (!CellUnit.of(raw).isEmpty() && !Units.fits(unit, column)) {
      doubt(heading, raw, Said.of(ExchangeSays.DOUBT_UNIT, raw));
      return;
    }
    String bare = CellUnit.without(raw);
    Matcher range = RANGE.matcher(bare);
    if (column.equals("volume_ml") && range.matches()) {
      join(heading, raw, List.of(range.group(1), range.group(2)), "-", unit);
    } else if (column.equals("portions_ml")) {
      join(heading, raw, List.of(bare.split("\\s*\\+\\s*")), "+", unit);
    } else {
      join(heading, raw, List.of(bare), "", unit);
    }
  }

  private void join(Heading heading, String raw, List<String> parts, String with, String unit) {
    StringBuilder out = new StringBuilder();
    for (String part : parts) {
      Numbers.Read read = numbers.read(part);
      String plain = read.plain();
      if (read.doubtful()) {
        doubts.add(
            new Doubt(
                line.number(),
                heading.name(),
                raw,
                Said.of(ExchangeSays.DOUBT_DECIMALS, part),
                List.of("decimals=comma", "decimals=point")));
        return;
      }
      if (plain == null || (heading.column().equals("portions_ml") && part.contains(" "))) {
        doubt(heading, raw, Said.of(ExchangeSays.DOUBT_NO_NUMBER, raw));
        return;
      }
      out.append(out.isEmpty() ? "" : with).append(Units.converted(plain, unit));
    }
    put(heading.column(), out.toString(), raw);
  }

  private void doubt(Heading heading, String raw, Said what) {
    doubts.add(
        new Doubt(line.number(), heading.name(), raw, what, List.of("skip=" + line.number())));
  }
}
