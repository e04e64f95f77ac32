package org.siltbench.station.command.receipt;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.command.Session;
import org.siltbench.station.work.exchange.Doubt;
import org.siltbench.station.work.exchange.Heading;
import org.siltbench.station.work.exchange.Preview;

/** Shows how a file of field notes would be read, and asks before anything is taken in. */
final class ImportText {

  private static final String MARK = "?? ";

  private final Session session;
  private final Preview preview;

  ImportText(Session session, Preview preview) {
    this.session = session;
    this.preview = preview;
  }

  /** Shows it; true if no doubt is left and the person agrees. */
  boolean agreed(boolean look, boolean yes) throws IOException {
    show();
    if (!preview.doubts().isEmpty()) {
      session.document(refused());
      session.message(
          preview.doubts().size()
              + (preview.doubts().size() == 1 ? " doubt" : " doubts")
              + " must be settled first. Nothing was recorded. Give the answers with --as, or"
              + " correct the file.");
      return false;
    }
    if (look || yes || asked()) {
      return true;
    }
    session.document(refused());
    session.message("Nothing was recorded.");
    return false;
  }

  private void show() {
    session.message(
        preview.file() + ": " + preview.charset() + ", cells parted by " + preview.separator());
    for (Heading heading : preview.headings()) {
      if (!heading.name().isEmpty()) {
        String unit = heading.unit().isEmpty() ? "" : ", " + heading.unit();
        session.message("  \"" + oneLine(heading.name()) + "\" is " + heading.column() + unit);
      }
    }
    preview.notes().forEach(note -> session.message(note.english()));
    preview.rows().forEach(row -> session.message("  " + line(row)));
    preview.doubts().forEach(doubt -> session.message(MARK + line(doubt)));
  }

  private static String line(Preview.Line row) {
    StringBuilder out = new StringBuilder("line " + row.line() + ":");
    row.cells()
        .forEach(
            (column, value) -> {
              out.append(' ').append(column).append(' ').append(oneLine(value));
              if (row.was().containsKey(column)) {
                out.append(" (\"").append(oneLine(row.was().get(column))).append("\")");
              }
              out.append(';');
            });
    return out.substring(0, out.length() - 1);
  }

  private static String line(Doubt doubt) {
    String where = doubt.line() == 0 ? "" : "Line " + doubt.line() + ": ";
    String column =
        doubt.line() == 0 || doubt.column().isEmpty() ? "" : "\"" + doubt.column() + "\": ";
    String settle =
        doubt.settle().isEmpty()
            ? " Correct it in the file."
            : " Settle it with --as \"" + String.join("\" or --as \"", doubt.settle()) + "\".";
    return oneLine(where + column + doubt.what().english() + settle);
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\R", " ");
  }

  private boolean asked() throws IOException {
    session.message("Take in these " + preview.rows().size() + " lines as shown? yes or no:");
    String answer = session.console().readLine();
    return answer != null && List.of("yes", "y").contains(answer.strip().toLowerCase(Locale.ROOT));
  }

  private Map<String, Object> refused() {
    return Map.of("import", document(preview), "received", List.of());
  }

  static Map<String, @Nullable Object> document(Preview preview) {
    Map<String, @Nullable Object> out = new LinkedHashMap<>();
    out.put("charset", preview.charset());
    out.put("separator", preview.separator());
    List<Map<String, Object>> columns = new ArrayList<>();
    for (Heading heading : preview.headings()) {
      columns.add(
          Map.of("name", heading.name(), "column", heading.column(), "unit", heading.unit()));
    }
    out.put("columns", columns);
    out.put("notes", preview.notes().stream().map(note -> note.english()).toList());
    out.put("doubts", preview.doubts().stream().map(ImportText::document).toList());
    out.put(
        "rows",
        preview.rows().stream()
            .map(row -> Map.of("line", row.line(), "cells", row.cells(), "was", row.was()))
            .toList());
    return out;
  }

  private static Map<String, Object> document(Doubt doubt) {
    return Map.of(
        "line", doubt.line(),
        "column", doubt.column(),
        "text", doubt.text(),
        "what", doubt.what().english(),
        "settle", doubt.settle());
  }
}
