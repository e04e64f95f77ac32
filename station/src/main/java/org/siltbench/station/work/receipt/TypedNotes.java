package org.siltbench.station.work.receipt;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.siltbench.station.Problem;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * The field notes of one bag as a person types them: the columns of the receipt table, read by the
 * same rules. A decimal comma is taken; an hour alone belongs to the day of the notes.
 */
public final class TypedNotes {

  /** What is recorded where a bag came back and nobody wrote anything. */
  public static final Map<String, String> NONE = Map.of("remarks", "no field notes");

  private static final Set<String> MOMENTS = Set.of("collected", "filtered_from", "filtered_to");

  private TypedNotes() {}

  /**
   * Reads the notes of one bag.
   *
   * @param entered the bag's ID or its whole code
   * @param cells columns and what was typed
   * @throws Problem if a cell makes no sense, with the column's name
   */
  public static ReceiptTable read(String entered, Map<String, String> cells, Clock clock) {
    Map<String, String> all = new LinkedHashMap<>(cells);
    all.put("filter", entered);
    List<String> columns = ReceiptReader.COLUMNS.stream().filter(all::containsKey).toList();
    String line =
        columns.stream()
            .map(column -> quoted(all.getOrDefault(column, "")))
            .collect(Collectors.joining(";"));
    try {
      return new ReceiptReader(clock)
          .read(Path.of("notes"), String.join(";", columns) + '\n' + line + '\n');
    } catch (Problem.WrongUse e) {
      throw new Problem.WrongUse(ReceiptSays.NOTES, inNotes(e.happened()));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the table is in memory
    }
  }

  /** Typed notes have no line and no place of a column. */
  private static Words inNotes(Words what) {
    return language -> {
      String notes = Said.of(ReceiptSays.IN_THE_NOTES).in(language);
      return what.in(language)
          .replaceFirst(
              "^notes, (?:line|Zeile) \\d+(?:, (?:column|Spalte) \\d+ \\((\\w+)\\))?",
              notes + " $1")
          .replace(notes + " :", notes + ':');
    };
  }

  private static String quoted(String cell) {
    return '"' + cell.replaceAll("\\R", " ").replace("\"", "\"\"") + '"';
  }

  /** Hours alone get the day: {@code 09:45} becomes {@code 2026-05-14T09:45}. */
  public static Map<String, String> on(LocalDate day, Map<String, String> cells) {
    Map<String, String> out = new LinkedHashMap<>(cells);
    for (String column : MOMENTS) {
      String text = cells.getOrDefault(column, "").strip();
      if (text.matches("\\d{1,2}:\\d{2}")) {
        out.put(column, day + "T" + (text.length() == 4 ? "0" + text : text));
      }
    }
    return out;
  }
}
