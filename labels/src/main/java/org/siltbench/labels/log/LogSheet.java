package org.siltbench.labels.log;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * Every weighing of a batch or a day.
 *
 * @param batch the batch's code
 * @param batchName its name
 * @param method the method with its edition
 * @param lines weighings in the order of the ledger
 * @param checks the check weighings that bracket them
 * @param overrides when somebody said to weigh on in spite of a check
 * @param corrections every correction named in the lines
 */
public record LogSheet(
    String batch,
    String batchName,
    String method,
    List<Line> lines,
    List<Check> checks,
    List<InSpite> overrides,
    List<Correction> corrections) {

  public LogSheet {
    lines = List.copyOf(lines);
    checks = List.copyOf(checks);
    overrides = List.copyOf(overrides);
    corrections = List.copyOf(corrections);
  }

  /**
   * One weighing.
   *
   * @param entry the ledger entry, "BENCH/SEQ"
   * @param at when the mass was recorded
   * @param filter the filter ID
   * @param status pre or post, with the round, for example "post 2"
   * @param reading the displayed digits with the unit
   * @param zero the zero before it, or empty
   * @param operator who
   * @param balance which balance
   * @param room temperature, pressure, humidity as text, or empty
   * @param check the state of the balance check, for example "passed 08:02" or "none"
   * @param note keyed by hand, moisture allowance, corrected by …
   */
  public record Line(
      String entry,
      OffsetDateTime at,
      Entered filter,
      String status,
      Entered reading,
      String zero,
      Entered operator,
      String balance,
      String room,
      String check,
      String note) {}

  /**
   * One check weighing.
   *
   * @param entry the ledger entry
   * @param at when
   * @param weight the check weight's name
   * @param phase opening, bracket or closing
   * @param certified certified value with unit
   * @param reading displayed digits with unit
   * @param error difference with unit
   * @param limit the limit with unit
   * @param pass true within the limit
   */
  public record Check(
      String entry,
      OffsetDateTime at,
      String weight,
      String phase,
      String certified,
      String reading,
      String error,
      String limit,
      boolean pass) {}

  /**
   * A supervisor's word to weigh on in spite of a failed or missing check.
   *
   * @param entry the ledger entry
   * @param at when it was said
   * @param balance which balance
   * @param by who
   * @param fault what was wrong: failed or missing
   * @param reason why
   */
  public record InSpite(
      String entry, OffsetDateTime at, String balance, String by, String fault, String reason) {}

  /**
   * One correction.
   *
   * @param entry the correcting entry
   * @param corrects the entry corrected
   * @param at when
   * @param by who
   * @param what field, old and new value
   * @param reason why
   */
  public record Correction(
      String entry, String corrects, OffsetDateTime at, String by, String what, String reason) {}
}
