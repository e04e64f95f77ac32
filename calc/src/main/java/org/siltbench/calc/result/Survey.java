package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.calc.blank.BlankTally;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Volume;

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

  Survey(Method method) {
    this.method = method;
    this.blanks = new BlankTally(method.blank());
  }

  private void take(InputRow row) {
    rows++;
    List<RowFault> found = RowCheck.faults(row, method);
    if (!found.isEmpty()) {
      note(found);
      return;
    }
    filters.add(row.filter());
    sampleRows += row.role() == RowRole.SAMPLE ? 1 : 0;
    pairs |= !row.pair().isEmpty();
    if (!row.sample().isEmpty()) {
      samples.add(row.sampleKey());
    }
    blank(row);
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
      faults.addAll(unread.faults());
      faults.sort(Comparator.comparingLong(RowFault::line));
      faultCount += unread.count();
    }
    close();
  }

  /** Throws when a row had a fault. */
  private void close() {
    if (faultCount > 0) {
      throw new InputFaults(faults, faultCount);
    }
  }

  BlankTally blanks() {
    return blanks;
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
