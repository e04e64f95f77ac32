package org.siltbench.station.work.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cells of a file, as they stand.
 *
 * @param separator what parts them
 * @param lines lines with something on them
 * @param rivals other separators that part the file as evenly
 */
record Grid(char separator, List<Line> lines, List<Character> rivals) {

  private static final List<Character> SEPARATORS = List.of(';', ',', '\t', '|');
  private static final int MOST_LINES = 100_000;

  /** One line and where it starts in the file, from 1. */
  record Line(long number, List<String> cells) {

    String cell(int column) {
      return column >= 0 && column < cells.size() ? cells.get(column).strip() : "";
    }

    boolean blank() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  static Grid of(String text, Optional<String> said) {
    Optional<Character> told = said.map(Grid::named).or(() -> spreadsheetLine(text));
    if (told.isPresent()) {
      return new Grid(told.get(), lines(text, told.get()), List.of());
    }
    char best = ';';
    int most = -1;
    Map<Character, Integer> scores = new HashMap<>();
    for (char separator : SEPARATORS) {
      int score = evenness(lines(text, separator));
      scores.put(separator, score);
      if (score > most) {
        best = separator;
        most = score;
      }
    }
    char chosen = best;
    int top = most;
    List<Character> rivals =
        SEPARATORS.stream()
            .filter(c -> c != chosen && top > 0 && scores.getOrDefault(c, 0) == top)
            .toList();
    return new Grid(best, lines(text, best), rivals);
  }

  private static char named(String word) {
    return switch (word) {
      case "comma" -> ',';
      case "tab" -> '\t';
      case "bar" -> '|';
      default -> ';';
    };
  }

  static String word(char separator) {
    return switch (separator) {
      case ',' -> "comma";
      case '\t' -> "tab";
      case '|' -> "bar";
      default -> "semicolon";
    };
  }

  /** Some spreadsheets write the separator on a line of its own. */
  private static Optional<Character> spreadsheetLine(String text) {
    return text.matches("(?is)sep=[;,|\t]\\R.*") ? Optional.of(text.charAt(4)) : Optional.empty();
  }

  /** Lines that have as many cells as most lines have, times that number less one. */
  private static int evenness(List<Line> lines) {
    Map<Integer, Integer> widths = new HashMap<>();
    for (Line line : lines) {
      widths.merge(line.cells().size(), 1, Integer::sum);
    }
    return widths.entrySet().stream()
        .filter(width -> width.getKey() > 1)
        .mapToInt(width -> width.getValue() * 1000 / Math.max(1, lines.size()))
        .max()
        .orElse(0);
  }

  private static List<Line> lines(String text, char separator) {
    List<Line> out = new ArrayList<>();
    CsvReader.CsvReaderBuilder builder =
        CsvReader.builder()
            .fieldSeparator(separator)
            .allowExtraFields(true)
            .allowMissingFields(true)
            .allowExtraCharsAfterClosingQuote(true)
            .skipEmptyLines(true);
    try (CsvReader<CsvRecord> reader = builder.ofCsvRecord(text)) {
      for (CsvRecord record : reader) {
        if (out.size() > MOST_LINES) {
          throw new org.siltbench.station.Problem.WrongUse(ExchangeSays.TOO_LONG, MOST_LINES);
        }
        out.add(new Line(record.getStartingLineNumber(), record.getFields()));
      }
    } catch (CsvParseException | java.io.IOException e) {
      return List.of();
    }
    out.removeIf(line -> line.blank() || line.cells().get(0).matches("(?i)sep=.?"));
    return out;
  }
}
