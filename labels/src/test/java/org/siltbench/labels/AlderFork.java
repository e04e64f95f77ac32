package org.siltbench.labels;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.BatchCode;
import org.siltbench.calc.id.BenchCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.chart.TimeChart;
import org.siltbench.labels.cycle.CycleCard;
import org.siltbench.labels.draw.Times;
import org.siltbench.labels.label.BagLabel;
import org.siltbench.labels.log.Entered;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.labels.report.TestReport;
import org.siltbench.labels.sheet.FieldSheet;

/** Invented papers of an invented storm on an invented stream. */
public final class AlderFork {

  public static final OffsetDateTime MADE = OffsetDateTime.parse("2026-03-14T16:20:00+01:00");
  public static final String HEAD =
      "3f9c1b7de2a84405c6d0917b5e3a28f4416cbd9070aa52e1c8d3f64b19e7027d";
  public static final BatchCode BATCH = BatchCode.of(new BenchCode("K3DF"), 7);

  private AlderFork() {}

  public static Imprint imprint() {
    return imprint(false);
  }

  public static Imprint imprint(boolean practice) {
    return new Imprint("Alder Fork bench", "K3DF", HEAD, 1204, MADE, practice, Imprint.PageSize.A4);
  }

  public static List<FilterId> filters(int count) {
    return BATCH.filters(count);
  }

  static String mass(int i) {
    return String.format(Locale.ROOT, "0.%05d", 12_100 + (i * 7919) % 1300);
  }

  static String role(int i) {
    return switch (i % 12) {
      case 4 -> "field-blank";
      case 9 -> "trip-blank";
      case 11 -> "method-blank";
      default -> "sample";
    };
  }

  public static List<BagLabel> labels(int count, boolean practice) {
    List<BagLabel> out = new ArrayList<>();
    List<FilterId> ids = BATCH.filters(Math.min(count, 500));
    for (int i = 0; i < count; i++) {
      FilterId id = ids.get(i % ids.size());
      BagCode code = new BagCode(id, mass(i), 1);
      out.add(
          new BagLabel(
              code.text(),
              id.text(),
              mass(i) + " g",
              1,
              role(i),
              i % 12 == 6,
              "Alder Fork, March",
              practice));
    }
    return out;
  }

  public static FieldSheet fieldSheet() {
    List<FieldSheet.Line> lines = new ArrayList<>();
    List<FilterId> ids = filters(26);
    for (int i = 0; i < ids.size(); i++) {
      String site = i % 2 == 0 ? "Upper ford" : "Mill bridge";
      String at = String.format(Locale.ROOT, "%02d:%02d", 14 + i / 8, 15 * (i / 2 % 4));
      lines.add(new FieldSheet.Line(i + 1, ids.get(i).grouped(), role(i), i % 12 == 6, site, at));
    }
    return new FieldSheet(
        BATCH.text(),
        "Alder Fork, March storm",
        "AF-2026-03",
        "Total suspended solids, SM 2540 D, 23rd edition",
        false,
        lines);
  }

  public static LogSheet logSheet(int count) {
    List<LogSheet.Line> lines = new ArrayList<>();
    List<FilterId> ids = filters(Math.min(count, 400));
    for (int i = 0; i < count; i++) {
      lines.add(logLine(i, ids.get(i % ids.size())));
    }
    List<LogSheet.Check> checks =
        List.of(
            check(118, "08:02:11", "opening", "0.10000 g", "−0.01 mg", true),
            check(139, "09:20:40", "bracket", "0.10002 g", "+0.01 mg", true),
            check(171, "11:41:05", "closing", "0.10014 g", "+0.13 mg", false));
    return new LogSheet(
        BATCH.text(),
        "Alder Fork, March storm",
        "Total suspended solids, SM 2540 D, 23rd edition",
        lines,
        checks,
        List.of(
            new LogSheet.InSpite(
                "K3DF/172",
                OffsetDateTime.parse("2026-03-14T11:46:00+01:00"),
                "bench balance 1",
                "M. Ødegård",
                "failed",
                "The last four bags are weighed before the shift ends; they go to the lab's second"
                    + " balance tomorrow as well.")),
        List.of(
            new LogSheet.Correction(
                "K3DF/160",
                "K3DF/124",
                MADE.plusMinutes(3),
                "M. Ødegård",
                "reading 0.12847 g, was 0.12874 g",
                "Two digits were exchanged when the mass was keyed in from the handwritten list;"
                    + " seen at the second reading."),
            new LogSheet.Correction(
                "K3DF/161",
                "K3DF/127",
                MADE.plusMinutes(4),
                "Σοφία Ἀλεξίου",
                "filter K3DF-07-08T, was K3DF-07-07V",
                "Bags exchanged on the bench.")));
  }

  private static LogSheet.Line logLine(int i, FilterId id) {
    Entered filter =
        i == 7 ? new Entered(id.grouped(), List.of("K3DF-07-07V")) : Entered.of(id.grouped());
    Entered mass =
        i == 4 ? new Entered("0.12847 g", List.of("0.12874 g")) : Entered.of(mass(i) + " g");
    String note =
        i == 4 ? "keyed by hand; corrected by K3DF/160" : i == 7 ? "corrected by K3DF/161" : "";
    return new LogSheet.Line(
        "K3DF/" + (120 + i),
        MADE.withHour(8).withMinute(5).plusSeconds(i * 95L),
        filter,
        i % 3 == 0 ? "post 2" : "post 1",
        mass,
        "0.00000 g",
        Entered.of(i % 2 == 0 ? "M. Ødegård" : "Юлия Щербакова"),
        "bench balance 1",
        "21.4 °C, 1008 hPa, 43 %",
        i < 30 ? "passed 08:02" : "not bracketed",
        note);
  }

  private static LogSheet.Check check(
      int seq, String at, String phase, String reading, String error, boolean pass) {
    return new LogSheet.Check(
        "K3DF/" + seq,
        OffsetDateTime.parse("2026-03-14T" + at + "+01:00"),
        "W100, 100 mg",
        phase,
        "0.10001 g",
        reading,
        error,
        "±0.10 mg",
        pass);
  }

  public static TestReport testReport(String approver) {
    List<TestReport.Result> results = new ArrayList<>();
    List<TimeChart.Point> ford = new ArrayList<>();
    List<TimeChart.Point> mill = new ArrayList<>();
    OffsetDateTime start = OffsetDateTime.parse("2026-03-12T14:00:00+01:00");
    List<FilterId> ids = filters(40);
    for (int i = 0; i < 34; i++) {
      double hours = i / 2 * 0.25;
      double rise = 420 * Math.exp(-Math.pow((hours - 1.6) / 0.9, 2)) + 6;
      double value = i % 2 == 0 ? rise : rise * 0.62 + 3;
      if (i > 30) {
        value = 1.4;
      }
      double half = 0.04 * value + 0.9;
      OffsetDateTime at = start.plusMinutes(15L * (i / 2));
      (i % 2 == 0 ? ford : mill).add(new TimeChart.Point(at, value, half, value < 2));
      results.add(result(i, at, value, half, ids.get(i)));
    }
    return new TestReport(
        "AF-2026-014",
        "AF-2026-011",
        "Alder Fork watershed group",
        new TestReport.Dates("2026-03-12", "2026-03-13", "2026-03-13 to 2026-03-16", "2026-03-17"),
        "Юлия Щербакова",
        approver,
        "Total suspended solids (aliquot)",
        "SM 2540 D, 23rd edition",
        "K3DF07, Alder Fork, March storm",
        "expanded, k = 2, about 95 %",
        results,
        new TimeChart(
            Reason.plain("Total suspended solids"),
            "mg/L",
            List.of(
                new TimeChart.Series("Upper ford", ford),
                new TimeChart.Series("Mill bridge", mill))),
        List.of(
            new TestReport.Blank(
                ids.get(34).grouped(), "field blank", "0.4 mg/L", "2.5 mg/L", "within", true),
            new TestReport.Blank(
                ids.get(35).grouped(), "method blank", "−0.1 mg", "±0.5 mg", "within", true),
            new TestReport.Blank(
                ids.get(36).grouped(),
                "control filter",
                "+0.62 mg",
                "±0.5 mg",
                "OUTSIDE: took up moisture",
                false)),
        List.of(
            new TestReport.Duplicate(
                "D1", "field replicate", "212 mg/L", "219 mg/L", "3.2 %", "5 %", true),
            new TestReport.Duplicate(
                "D2", "bottle split", "8.1 mg/L", "7.4 mg/L", "0.7 mg/L", "1 mg/L", true)),
        control(),
        List.of(
            new TestReport.BudgetPart(
                "mass before (balance, repeatability)", "0.042 mg", "0.14", 0.12),
            new TestReport.BudgetPart(
                "mass after (balance, moisture, repeatability)", "0.061 mg", "0.20", 0.25),
            new TestReport.BudgetPart("volume (cylinder, reading)", "1.5 mL", "0.31", 0.61),
            new TestReport.BudgetPart("blank correction", "none", "0.00", 0.02)),
        List.of(
            new TestReport.FlagMeaning(
                "below-limit", "the result is below the reporting limit of 2.0 mg/L"),
            new TestReport.FlagMeaning(
                "two-filters",
                "the sample was spread over two filters; masses and volumes were added"),
            new TestReport.FlagMeaning("torn", "the filter was torn without visible loss")),
        List.of(
            "Blanks served as a control only; no blank was subtracted.",
            "Results hold for the samples as received. An aliquot of a shaken bottle may miss sand."));
  }

  private static ControlChart control() {
    List<ControlChart.Point> points = new ArrayList<>();
    double[] errors = {
      0.01, -0.02, 0.03, 0.00, 0.02, -0.03, -0.01, 0.04, 0.02, 0.01, -0.02, 0.00, 0.03, 0.05, 0.13
    };
    for (int i = 0; i < errors.length; i++) {
      points.add(new ControlChart.Point(MADE.minusDays(errors.length - i), errors[i]));
    }
    return new ControlChart(
        Reason.plain("Check weight W100, 100 mg: error"), "mg", 0.008, -0.06, 0.076, 0.1, points);
  }

  private static TestReport.Result result(
      int i, OffsetDateTime at, double value, double half, FilterId id) {
    boolean below = value < 2;
    String flags = below ? "below-limit" : i == 6 ? "two-filters" : i == 9 ? "torn" : "";
    return new TestReport.Result(
        String.format(Locale.ROOT, "AF-%03d", i + 1),
        i % 2 == 0 ? "Upper ford" : "Mill bridge",
        Times.minute(at),
        i == 6 ? id.grouped() + "\n" + filters(40).get(39).grouped() : id.grouped(),
        "300",
        String.format(Locale.ROOT, "%.2f", value * 0.3),
        below ? "< 2.0" : String.format(Locale.ROOT, value < 10 ? "%.1f" : "%.0f", value),
        String.format(Locale.ROOT, half < 10 ? "%.1f" : "%.0f", half),
        flags.isEmpty() ? List.of() : List.of(flags));
  }

  public static CycleCard cycleCard() {
    List<CycleCard.Dish> dishes = new ArrayList<>();
    List<FilterId> ids = filters(23);
    for (int i = 0; i < ids.size(); i++) {
      dishes.add(
          new CycleCard.Dish(Integer.toString(i + 1), ids.get(i).grouped(), i == 8 ? "torn" : ""));
    }
    return new CycleCard(
        "12",
        "post-weigh, second drying",
        "103 to 105 °C",
        OffsetDateTime.parse("2026-03-14T08:40:00+01:00"),
        OffsetDateTime.parse("2026-03-14T09:40:00+01:00"),
        OffsetDateTime.parse("2026-03-14T10:25:00+01:00"),
        null,
        "M. Ødegård",
        dishes);
  }
}
