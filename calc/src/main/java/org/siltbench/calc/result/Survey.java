package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.blank.BlankTally;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.stats.RunningSummary;
import org.siltbench.calc.stats.Summary;

/** The first look at all rows: faults, blanks, names that occur again, pairs. */
final class Survey {

  static final int MOST_FAULTS = 50;

  private final Method method;
  private final BlankTally blanks;
  private final SeenTwice filters = new SeenTwice(10_000);
  private final SeenTwice samples = new SeenTwice(Integer.MAX_VALUE);
  private final List<RowFault> faults = new ArrayList<>();
  private long faultCount;
  private long rows;
  private long sampleRows;
  private boolean pairs;
  private final AnalyticalDays days = new AnalyticalDays();
  private final RunningSummary ignitionLosses = new RunningSummary();
  private String day = "";
  private long daySamples;
  private long dayBlanks;

  Survey(Method method) {
    this.method = method;
    this.blanks = new BlankTally(method.blank());
  }

  /** Takes a row; false where it has faults and is not to be used. */
  boolean take(InputRow row) {
    rows++;
    List<RowFault> found = RowCheck.faults(row, method);
    if (!found.isEmpty()) {
      note(found);
      return false;
    }
    filters.add(row.filter());
    pairs |= !row.pair().isEmpty();
    if (!row.sample().isEmpty()) {
      samples.add(row.sampleKey());
    }
    boolean sample = row.role() == RowRole.SAMPLE;
    sampleRows += sample ? 1 : 0;
    count(row, sample);
    if (!row.role().isWater()) {
      blank(row);
    }
    return true;
  }

  /** Counts by day; rows of one day mostly follow each other. */
  private void count(InputRow row, boolean sample) {
    if (!row.analysed().equals(day)) {
      closeDay();
      day = row.analysed();
    }
    daySamples += sample ? 1 : 0;
    dayBlanks += row.role().blankKind() == method.blank().kind() ? 1 : 0;
  }

  private void closeDay() {
    if (daySamples + dayBlanks > 0) {
      days.add(day, daySamples, dayBlanks);
    }
    daySamples = 0;
    dayBlanks = 0;
  }

  private void note(List<RowFault> found) {
    faultCount += found.size();
    found.stream().limit(Math.max(0, MOST_FAULTS - faults.size())).forEach(faults::add);
  }

  private void blank(InputRow row) {
    BlankKind kind = row.role().blankKind();
    Weighed weighed = kind == null ? null : Weighed.of(row, method);
    if (kind != null && weighed != null) {
      blanks.add(kind, weighed.residue(), mgPerL(row, weighed));
      RowExtras extras = row.extras();
      Mass ignited = extras == null ? null : extras.ignited();
      if (ignited != null && kind == method.blank().kind()) {
        ignitionLosses.add(weighed.counted().minus(ignited).milligrams());
      }
    }
  }

  static @Nullable Double mgPerL(InputRow row, Weighed weighed) {
    Volume volume = row.volume();
    return volume != null && volume.isPositive()
        ? weighed.residue().milligrams() / volume.litres()
        : null;
  }

  /** Reads all rows; what the source could not read is told together with what is found here. */
  void read(RowSource source) {
    try {
      source.forEach(this::take);
    } catch (InputFaults unread) {
      unread(unread);
    }
    close();
  }

  /** Notes what a source could not read. */
  void unread(InputFaults unread) {
    faults.addAll(unread.faults());
    faults.sort(Comparator.comparingLong(RowFault::line));
    faultCount += unread.count();
  }

  /** Throws when a row had a fault. */
  void close() {
    closeDay();
    if (faultCount > 0) {
      throw new InputFaults(faults, faultCount);
    }
  }

  BlankTally blanks() {
    return blanks;
  }

  AnalyticalDays days() {
    return days;
  }

  /** What ignited blanks lost in the furnace; null without any. */
  @Nullable Summary ignitionLosses() {
    return ignitionLosses.count() == 0 ? null : ignitionLosses.summary();
  }

  Set<String> repeatedFilters() {
    return filters.repeated();
  }

  Set<String> repeatedSamples() {
    return samples.repeated();
  }

  boolean hasPairs() {
    return pairs;
  }

  long rows() {
    return rows;
  }

  long sampleRows() {
    return sampleRows;
  }
}
