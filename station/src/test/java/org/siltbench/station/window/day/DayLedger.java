package org.siltbench.station.window.day;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.json.Json;
import org.siltbench.station.json.NotJson;

/** The one ledger file of a lab folder, line by line, for two labs to be held side by side. */
final class DayLedger {

  /** One line: its kind and who wrote it, and every value below its data by its path. */
  private record Line(String ref, String kind, String by, Map<String, String> values) {}

  /** What depends on the moment: the raw lines and what the detector makes of their number. */
  private static final Pattern MOMENT =
      Pattern.compile("raw\\.\\d+|u_g|drift_mg_min|moisture_mg|zero_g|shown_g|key|to");

  /** What was weighed, and what follows from it: two balances of one kind differ in noise. */
  private static final Pattern MEASURED =
      Pattern.compile("mass_g|reading_g|change_g|error_mg|rows\\.\\d+\\.\\w+_mg(_l)?");

  private static final Pattern TIME = Pattern.compile("in|out|cooled_until|useful_until");

  private DayLedger() {}

  private static List<Line> of(Path lab) {
    List<Line> lines = new ArrayList<>();
    for (String text : text(lab)) {
      try {
        Map<String, Object> entry = Json.object(text);
        Map<String, String> values = new TreeMap<>();
        flatten("", entry.get("data"), values);
        lines.add(
            new Line(
                entry.get("bench") + "/" + entry.get("seq"),
                String.valueOf(entry.get("kind")),
                String.valueOf(entry.get("by")),
                values));
      } catch (NotJson e) {
        throw new AssertionError(text, e);
      }
    }
    return lines;
  }

  private static List<String> text(Path lab) {
    try {
      String bench = LabFolder.readCode(lab);
      return Files.readAllLines(lab.resolve("ledger").resolve(bench + ".jsonl"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void flatten(String path, Object value, Map<String, String> out) {
    if (value instanceof Map<?, ?> map) {
      map.forEach((key, inner) -> flatten(path + '.' + key, inner, out));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        flatten(path + '.' + i, list.get(i), out);
      }
    } else {
      out.put(path.substring(1), String.valueOf(value));
    }
  }

  /**
   * Every line with all that must be the same whoever did the day: what is measured and the moments
   * only stand there by name.
   */
  static List<String> facts(Path lab) {
    return of(lab).stream().map(DayLedger::fact).toList();
  }

  private static String fact(Line line) {
    StringBuilder fact = new StringBuilder(line.ref() + ' ' + line.kind() + " by " + line.by());
    line.values()
        .forEach(
            (path, value) -> {
              if (!MOMENT.matcher(path).matches()) {
                fact.append("; ").append(path).append('=').append(said(path, value));
              }
            });
    return fact.toString();
  }

  private static String said(String path, String value) {
    if (TIME.matcher(path).matches()) {
      return "a time";
    }
    boolean measured = MEASURED.matcher(path).matches() && !value.isEmpty();
    return measured ? "measured" : path.equals("where") ? "a port" : value;
  }

  /** What was measured, by entry and name. */
  static Map<String, Double> measured(Path lab) {
    Map<String, Double> measured = new TreeMap<>();
    for (Line line : of(lab)) {
      line.values()
          .forEach(
              (path, value) -> {
                if (MEASURED.matcher(path).matches() && !value.isEmpty()) {
                  measured.put(line.ref() + ' ' + path, Double.valueOf(value));
                }
              });
    }
    return measured;
  }

  /** The filters that have a mass. */
  static Set<String> preWeighed(Path lab) {
    return of(lab).stream()
        .filter(line -> line.kind().equals("weighing"))
        .map(line -> line.values().get("filter"))
        .collect(Collectors.toSet());
  }

  /** Where the field notes of a filter stand, as {@code BENCH/SEQ}. */
  static String receiptOf(Path lab, String filter) {
    return of(lab).stream()
        .filter(line -> line.kind().equals("sample.received"))
        .filter(line -> filter.equals(line.values().get("filter")))
        .map(Line::ref)
        .findFirst()
        .orElseThrow();
  }
}
