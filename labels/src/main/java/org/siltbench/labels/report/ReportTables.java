package org.siltbench.labels.report;

import java.io.IOException;
import java.util.Locale;
import org.siltbench.labels.draw.Cell;
import org.siltbench.labels.draw.Column;
import org.siltbench.labels.draw.Flow;
import org.siltbench.labels.draw.Table;

/** The tables of the test report. */
final class ReportTables {

  private ReportTables() {}

  static void results(Flow flow, TestReport report) throws IOException {
    Table table =
        Table.toRead(
            Column.left("sample", 18),
            Column.left("site", 22),
            Column.left("collected", 24),
            Column.left("filters", 24),
            Column.right("volume\nmL", 14),
            Column.right("residue\nmg", 15),
            Column.right("result\nmg/L", 17),
            Column.right("± U\nmg/L", 15),
            Column.left("flags", 31));
    for (TestReport.Result result : report.results()) {
      table.row(
          Cell.of(result.sample()),
          Cell.of(result.site()),
          Cell.of(result.collected()),
          Cell.of(result.filters()),
          Cell.of(result.volume()),
          Cell.of(result.residue()),
          Cell.strong(result.result()),
          Cell.of(result.uncertainty()),
          Cell.of(String.join(", ", result.flags())));
    }
    flow.heading("Results").table(table);
  }

  static void blanks(Flow flow, TestReport report) throws IOException {
    if (report.blanks().isEmpty()) {
      return;
    }
    Table table =
        Table.toRead(
            Column.left("filter", 30),
            Column.left("kind", 40),
            Column.right("value", 30),
            Column.right("limit", 30),
            Column.left("verdict", 50));
    for (TestReport.Blank blank : report.blanks()) {
      table.row(
          Cell.of(blank.filter()),
          Cell.of(blank.kind()),
          Cell.of(blank.value()),
          Cell.of(blank.limit()),
          verdict(blank.verdict(), blank.pass()));
    }
    flow.heading("Blanks, control filters, reference samples").table(table);
  }

  static void duplicates(Flow flow, TestReport report) throws IOException {
    if (report.duplicates().isEmpty()) {
      return;
    }
    Table table =
        Table.toRead(
            Column.left("pair", 24),
            Column.left("kind", 36),
            Column.right("first", 24),
            Column.right("second", 24),
            Column.right("difference", 26),
            Column.right("limit", 26),
            Column.left("verdict", 20));
    for (TestReport.Duplicate pair : report.duplicates()) {
      table.row(
          Cell.of(pair.pair()),
          Cell.of(pair.kind()),
          Cell.of(pair.first()),
          Cell.of(pair.second()),
          Cell.of(pair.difference()),
          Cell.of(pair.limit()),
          verdict(pair.pass() ? "within" : "OUTSIDE", pair.pass()));
    }
    flow.heading("Duplicates").table(table);
  }

  static void budget(Flow flow, TestReport report) throws IOException {
    if (report.budget().isEmpty()) {
      return;
    }
    Table table =
        Table.toRead(
            Column.left("source of uncertainty", 70),
            Column.right("standard uncertainty", 40),
            Column.right("effect, mg/L", 36),
            Column.right("share of variance", 34));
    for (TestReport.BudgetPart part : report.budget()) {
      table.row(
          Cell.of(part.name()),
          Cell.of(part.value()),
          Cell.of(part.effect()),
          Cell.of(String.format(Locale.ROOT, "%.0f %%", 100 * part.share())));
    }
    flow.heading("Uncertainty budget of a typical sample").table(table);
  }

  private static Cell verdict(String words, boolean pass) {
    return pass ? Cell.of(words) : Cell.strong(words);
  }
}
