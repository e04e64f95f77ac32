package org.siltbench.labels.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.chart.ControlChart;
import org.siltbench.labels.chart.TimeChart;

/**
 * The test report. Figures come as text, rounded by the rules of calculation; charts carry numbers.
 *
 * @param number the report's number
 * @param replaces the report it replaces, or null
 * @param client whom it is for, or empty
 * @param dates collected, received, analysed, issued
 * @param analyst who weighed and calculated
 * @param approver who released it, or empty while it is a draft
 * @param parameter the parameter's name, for example "Total suspended solids"
 * @param method the method's name and edition
 * @param batch the batch's code and name
 * @param coverage how the uncertainty is stated, for example "k = 2, about 95 %"
 * @param results one row a sample
 * @param chart results over time, or null
 * @param blanks one row a blank or control filter
 * @param duplicates one row a pair
 * @param control the check weight's control chart, or null
 * @param budget the uncertainty budget of a typical sample
 * @param flags the meaning of every flag used
 * @param statements sentences that must be said: blank rule, departures, subcontracts
 */
public record TestReport(
    String number,
    @Nullable String replaces,
    String client,
    Dates dates,
    String analyst,
    String approver,
    String parameter,
    String method,
    String batch,
    String coverage,
    List<Result> results,
    @Nullable TimeChart chart,
    List<Blank> blanks,
    List<Duplicate> duplicates,
    @Nullable ControlChart control,
    List<BudgetPart> budget,
    List<FlagMeaning> flags,
    List<String> statements) {

  public TestReport {
    results = List.copyOf(results);
    blanks = List.copyOf(blanks);
    duplicates = List.copyOf(duplicates);
    budget = List.copyOf(budget);
    flags = List.copyOf(flags);
    statements = List.copyOf(statements);
  }

  /** Dates as text, a day or a span. */
  public record Dates(String collected, String received, String analysed, String issued) {}

  /** One sample: filters, volume in mL, residue in mg, result and expanded uncertainty in mg/L. */
  public record Result(
      String sample,
      String site,
      String collected,
      String filters,
      String volume,
      String residue,
      String result,
      String uncertainty,
      List<String> flags) {

    public Result {
      flags = List.copyOf(flags);
    }
  }

  /** One blank, control filter or reference sample, against its limit. */
  public record Blank(
      String filter, String kind, String value, String limit, String verdict, boolean pass) {}

  /** One pair, its difference and limit. */
  public record Duplicate(
      String pair,
      String kind,
      String first,
      String second,
      String difference,
      String limit,
      boolean pass) {}

  /**
   * One part of the uncertainty.
   *
   * @param name what it is
   * @param value its standard uncertainty with unit
   * @param effect its effect on the result, mg/L
   * @param share its share of the variance, 0 to 1
   */
  public record BudgetPart(String name, String value, String effect, double share) {}

  /** A flag word and what it means. */
  public record FlagMeaning(String flag, String meaning) {}
}
