package org.siltbench.calc.result;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankCorrection;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.blank.BlankTally;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;

/**
 * Calculates a whole batch.
 *
 * <p>The rows are read two or three times: first for blanks and faults, once more where there are
 * pairs or samples over several filters, then for the results, which are handed out one by one in
 * the order of the rows. Ten million rows take no more memory than ten thousand, save for pairs and
 * samples over several filters, which are kept. No result depends on the order of rows.
 *
 * <p>Edges: no row gives no result and an empty report; a sample without a volume gets its residue
 * and no concentration; a negative residue is kept with its sign.
 */
public final class BatchCalculation {

  private final Method method;
  private final @Nullable BalanceRecord balance;

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
    this.method = method;
    this.balance = balance;
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
    Propagator uncorrected = propagator(BlankCorrection.NONE);
    BlankCorrection correction = correction(survey.blanks());
    Propagator propagator = propagator(correction);
    Groups groups = groups(rows, survey, propagator);
    boolean missing = BlankCorrection.isMissing(survey.blanks());
    RowResults calculation = new RowResults(method, propagator, uncorrected, missing, groups);
    rows.forEach(row -> results.accept(calculation.of(row)));
    return report(survey, correction, groups == null ? List.of() : groups.pairs().verdicts());
  }

  private Propagator propagator(BlankCorrection correction) {
    return new Propagator(method.uncertainty(), balance, correction);
  }

  private BlankCorrection correction(BlankTally blanks) {
    double one = balance == null ? method.uncertainty().massMg() : balance.repeatabilityMg();
    return BlankCorrection.of(blanks, one * Math.sqrt(2), method.uncertainty().blankMg());
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

  private BatchReport report(Survey survey, BlankCorrection correction, List<PairVerdict> pairs) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    blankFlags(flags, survey);
    pairFlags(flags, survey.sampleRows(), pairs);
    return new BatchReport(
        method, survey.rows(), survey.sampleRows(), survey.blanks(), correction, pairs, flags);
  }

  private void blankFlags(Set<Flag> flags, Survey survey) {
    BlankTally blanks = survey.blanks();
    long needed = method.blank().needed(survey.sampleRows(), method.sample().batchSize());
    long count = blanks.count(method.blank().kind());
    if (count < needed) {
      flags.add(count == 0 ? Flag.NO_BLANKS : Flag.FEW_BLANKS);
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
