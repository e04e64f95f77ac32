package org.siltbench.calc.result;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.blank.BlankRule;
import org.siltbench.calc.blank.BlankTally;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;

/**
 * Calculates a whole batch.
 *
 * <p>The rows are read two or three times: first for blanks and faults, once more where there are
 * pairs or samples over several filters, then for the results, which are handed out one by one in
 * the order of the rows. Where no row depends on another they can be read once. Ten million rows
 * take no more memory than ten thousand, save for pairs and samples over several filters, which are
 * kept. No result depends on the order of rows.
 *
 * <p>Edges: no row gives no result and an empty report; a sample without a volume gets its residue
 * and no concentration; a negative residue is kept with its sign.
 */
public final class BatchCalculation {

  private final Method method;
  private final @Nullable BalanceRecord balance;
  private final AnalyticalDays elsewhere;

  /** A calculation under a method, with its own {@code u_mass_mg}. */
  public BatchCalculation(Method method) {
    this(method, null);
  }

  /**
   * A calculation under a method on a known balance.
   *
   * @param balance takes the place of the method's {@code u_mass_mg}; null to keep that
   */
  public BatchCalculation(Method method, @Nullable BalanceRecord balance) {
    this(method, balance, new AnalyticalDays());
  }

  /**
   * The same where other rows were analysed under the same method.
   *
   * @param elsewhere samples and blanks of the same method that are not among the rows; they count
   *     on days that rows were analysed on
   */
  public BatchCalculation(
      Method method, @Nullable BalanceRecord balance, AnalyticalDays elsewhere) {
    this.method = method;
    this.balance = balance;
    this.elsewhere = elsewhere;
  }

  /**
   * Reads the rows, hands out each result, and reports on the batch.
   *
   * @throws InputFaults before any result is handed out, if a row cannot be calculated: a mass is
   *     missing, a volume is zero, negative or absurd, a filter occurs twice
   */
  public BatchReport run(RowSource rows, Consumer<ResultRow> results) {
    Survey survey = new Survey(method);
    survey.read(rows);
    BlankCorrection correction = correction(survey.blanks());
    Propagator propagator = propagator(correction);
    Groups groups = groups(rows, survey, propagator);
    RowResults calculation = results(survey, propagator, groups);
    Set<Flag> seen = EnumSet.noneOf(Flag.class);
    rows.forEach(row -> hand(calculation.of(row), results, seen));
    return report(survey, correction, groups == null ? List.of() : groups.pairs().verdicts(), seen);
  }

  /**
   * True if the method lets a row's result be known as soon as the row is: it subtracts no blank.
   * The rows must stand alone as well: {@link InputColumns#rowsStandAlone}.
   */
  public static boolean rowsStandAlone(Method method) {
    return method.blank().use() != BlankRule.Use.SUBTRACT;
  }

  /**
   * The same in one reading, for rows that stand alone under such a method: results are handed out
   * as the rows are read, and are void if it throws.
   *
   * @throws InputFaults if a row cannot be calculated
   * @throws IllegalArgumentException if a row is one of a pair or of a sample
   */
  public BatchReport runOnce(RowSource rows, Consumer<ResultRow> results) {
    if (!rowsStandAlone(method)) {
      throw new IllegalArgumentException(
          "the method subtracts a blank: its rows need two readings");
    }
    Survey survey = new Survey(method);
    Propagator propagator = propagator(BlankCorrection.NONE);
    RowResults calculation = results(survey, propagator, null);
    Set<Flag> seen = EnumSet.noneOf(Flag.class);
    try {
      rows.forEach(
          row -> {
            if (!row.pair().isEmpty() || !row.sample().isEmpty()) {
              throw new IllegalArgumentException("a row of a pair or a sample: " + row.filter());
            }
            if (survey.take(row)) {
              hand(calculation.of(row), results, seen);
            }
          });
    } catch (InputFaults unread) {
      survey.unread(unread);
    }
    survey.close();
    groups(rows, survey, propagator);
    return report(survey, BlankCorrection.NONE, List.of(), seen);
  }

  /** Hands a result out, and keeps what one row alone shows of the batch. */
  private static void hand(ResultRow row, Consumer<ResultRow> results, Set<Flag> seen) {
    if (row.flags().contains(Flag.RECOVERY_OUT)) {
      seen.add(Flag.RECOVERIES_OUT);
    }
    results.accept(row);
  }

  private RowResults results(Survey survey, Propagator propagator, @Nullable Groups groups) {
    boolean missing = BlankCorrection.isMissing(survey.blanks());
    IgnitionBlank loss = IgnitionBlank.of(survey.ignitionLosses(), oneResidue());
    return new RowResults(
        method,
        propagator,
        propagator.without(),
        missing,
        groups,
        new FurtherResults(balance, loss),
        loss.blanks() > 0);
  }

  private Propagator propagator(BlankCorrection correction) {
    return new Propagator(method.uncertainty(), balance, correction);
  }

  /** Standard uncertainty of a difference of two weighings, mg. */
  private double oneResidue() {
    double one = balance == null ? method.uncertainty().massMg() : balance.repeatabilityMg();
    return one * Math.sqrt(2);
  }

  private BlankCorrection correction(BlankTally blanks) {
    return BlankCorrection.of(blanks, oneResidue(), method.uncertainty().blankMg());
  }

  private @Nullable Groups groups(RowSource rows, Survey survey, Propagator propagator) {
    if (!Groups.isNeeded(survey)) {
      return null;
    }
    Groups groups = new Groups(method, propagator, survey);
    rows.forEach(groups::take);
    groups.close();
    return groups;
  }

  private BatchReport report(
      Survey survey, BlankCorrection correction, List<PairVerdict> pairs, Set<Flag> flags) {
    survey.days().addElsewhere(elsewhere);
    List<AnalyticalDays.Day> days =
        survey.days().under(method.blank(), method.sample().batchSize());
    blankFlags(flags, survey.blanks(), days);
    pairFlags(flags, survey.sampleRows(), pairs);
    return new BatchReport(
        method,
        survey.rows(),
        survey.sampleRows(),
        survey.blanks(),
        correction,
        days,
        pairs,
        flags);
  }

  /** A day without any blank counts as one without, whatever other days have. */
  private static void blankFlags(
      Set<Flag> flags, BlankTally blanks, List<AnalyticalDays.Day> days) {
    for (AnalyticalDays.Day day : days) {
      if (day.isShort()) {
        flags.add(day.blanks() == 0 ? Flag.NO_BLANKS : Flag.FEW_BLANKS);
      }
    }
    for (BlankKind kind : BlankKind.values()) {
      if (blanks.highCount(kind) > 0) {
        flags.add(Flag.BLANKS_HIGH);
      }
    }
  }

  private void pairFlags(Set<Flag> flags, long samples, List<PairVerdict> pairs) {
    int every = method.duplicates().everySamples();
    long compared = pairs.stream().filter(pair -> !Double.isNaN(pair.second())).count();
    if (every > 0 && compared < (samples + every - 1) / every) {
      flags.add(Flag.FEW_DUPLICATES);
    }
    if (pairs.stream().anyMatch(pair -> pair.flag() == Flag.DUPLICATE_APART)) {
      flags.add(Flag.DUPLICATES_APART);
    }
  }
}
