package org.siltbench.labels.report;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.chart.ChartLayout;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.chart.TimeChart;
import org.siltbench.labels.draw.Flow;
import org.siltbench.labels.draw.MarkPainter;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Times;
import org.siltbench.labels.draw.Type;

/** Draws the test report. */
public final class ReportDrawing {

  private static final double CHART = 60;
  private static final double CONTROL = 42;
  private static final double WITH_SIGNATURES = 46;

  private ReportDrawing() {}

  public static void draw(Paper paper, TestReport report) throws IOException {
    Flow flow = Flow.upright(paper, "Test report " + report.number());
    String number = report.number();
    flow.title("Test report", number.equals("draft") ? number : "no. " + number);
    facts(flow, report);
    ReportTables.results(flow, report);
    timeChart(flow, report.chart());
    ReportTables.blanks(flow, report);
    ReportTables.duplicates(flow, report);
    controlChart(flow, report.control());
    ReportTables.budget(flow, report);
    flags(flow, report);
    statements(flow, report);
    String approver = report.approver();
    flow.signatures(
        "analyst: " + report.analyst(),
        approver.isEmpty() ? "approved by (draft until signed)" : "approved by: " + approver);
    flow.finish();
  }

  private static void facts(Flow flow, TestReport report) throws IOException {
    String replaces = report.replaces();
    TestReport.Dates dates = report.dates();
    if (replaces != null) {
      flow.paragraph(
          "This report replaces no. " + replaces + ", which is no longer valid.",
          Type.STRONG,
          flow.left(),
          flow.width());
    }
    flow.facts(
        3,
        "Parameter",
        report.parameter(),
        "Method",
        report.method(),
        "Batch",
        report.batch(),
        "For",
        report.client(),
        "Collected",
        dates.collected(),
        "Received",
        dates.received(),
        "Analysed",
        dates.analysed(),
        "Issued",
        dates.issued(),
        "Analyst",
        report.analyst(),
        "Approved by",
        report.approver().isEmpty() ? "not yet: draft" : report.approver(),
        "Uncertainty",
        report.coverage());
  }

  private static void timeChart(Flow flow, @Nullable TimeChart chart) throws IOException {
    if (chart == null) {
      return;
    }
    flow.down(2).keep(CHART);
    flow.paper().begin("Figure");
    flow.paper()
        .describe(
            chart.title().english()
                + ", "
                + chart.unit()
                + ", over time; the table has the values");
    flow.paper()
        .decorate(
            () ->
                MarkPainter.paint(
                    flow.page(),
                    flow.left(),
                    flow.y(),
                    ChartLayout.of(chart, flow.width(), CHART)));
    flow.paper().end();
    flow.down(CHART);
    flow.paragraph(
        "Bars: expanded uncertainty. Hollow marks: below the reporting limit.",
        Type.SMALL,
        flow.left(),
        flow.width());
  }

  private static void controlChart(Flow flow, @Nullable ControlChart chart) throws IOException {
    if (chart == null) {
      return;
    }
    flow.heading("Balance control chart").keep(CONTROL);
    flow.paper().begin("Figure");
    flow.paper()
        .describe(chart.title().english() + ", " + chart.unit() + ", in order of the checks");
    flow.paper()
        .decorate(
            () ->
                MarkPainter.paint(
                    flow.page(),
                    flow.left(),
                    flow.y(),
                    ChartLayout.of(chart, flow.width(), CONTROL)));
    flow.paper().end();
    flow.down(CONTROL + 1);
    flow.paragraph(days(chart), Type.SMALL, flow.left(), flow.width());
  }

  private static String days(ControlChart chart) {
    List<ControlChart.Point> points = chart.points();
    String first = Times.minute(points.get(0).at());
    String last = Times.minute(points.get(points.size() - 1).at());
    return "Checks in their order, from "
        + first
        + " to "
        + last
        + ". Limit: the method's. Upper, lower: 3 sigma. Hollow marks: beyond the limit.";
  }

  private static void flags(Flow flow, TestReport report) throws IOException {
    if (report.flags().isEmpty()) {
      return;
    }
    flow.heading("Flags");
    for (TestReport.FlagMeaning flag : report.flags()) {
      flow.paragraph(flag.flag() + ": " + flag.meaning());
    }
  }

  private static void statements(Flow flow, TestReport report) throws IOException {
    if (report.statements().isEmpty()) {
      return;
    }
    // Nobody should sign a page that says nothing.
    flow.keep(WITH_SIGNATURES).heading("Statements");
    for (String statement : report.statements()) {
      flow.paragraph(statement);
    }
  }
}
