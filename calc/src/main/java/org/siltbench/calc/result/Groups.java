package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;

/**
 * The second look, where one is needed: samples over several filters are summed, pairs gathered,
 * and filters that occur twice found out. Memory grows with these alone.
 */
final class Groups {

  private final Method method;
  private final Propagator propagator;
  private final Set<String> repeatedFilters;
  private final Set<String> repeatedSamples;
  private final Map<String, Long> filterLines = new HashMap<>();
  private final Map<String, SampleSums> sums = new HashMap<>();
  private final PairBook pairs;
  private final List<RowFault> faults = new ArrayList<>();

  Groups(Method method, Propagator propagator, Survey survey) {
    this.method = method;
    this.propagator = propagator;
    this.repeatedFilters = survey.repeatedFilters();
    this.repeatedSamples = survey.repeatedSamples();
    this.pairs = new PairBook(method);
  }

  static boolean isNeeded(Survey survey) {
    return survey.hasPairs()
        || !survey.repeatedFilters().isEmpty()
        || !survey.repeatedSamples().isEmpty();
  }

  void take(InputRow row) {
    if (repeatedFilters.contains(row.filter())) {
      twice(row);
    }
    Weighed weighed = Weighed.of(row, method);
    if (weighed == null) {
      return;
    }
    SampleSums group = null;
    if (repeatedSamples.contains(row.sampleKey())) {
      group = sums.computeIfAbsent(row.sampleKey(), key -> new SampleSums());
      weighed.addTo(group, row, method);
    }
    if (!row.pair().isEmpty()) {
      pairs.add(row, group != null ? group : lone(row, weighed));
    }
  }

  private SampleSums lone(InputRow row, Weighed weighed) {
    SampleSums alone = new SampleSums();
    weighed.addTo(alone, row, method);
    return alone;
  }

  private void twice(InputRow row) {
    Long first = filterLines.putIfAbsent(row.filter(), row.line());
    if (first != null && faults.size() < Survey.MOST_FAULTS) {
      faults.add(new RowFault(row.line(), "filter", row.filter(), RowSays.FILTER_ONCE.with(first)));
    }
  }

  /** Throws when a filter occurs twice; else compares the pairs. */
  void close() {
    if (!faults.isEmpty()) {
      throw new InputFaults(faults, faults.size());
    }
    pairs.compare(propagator);
  }

  /** The sums of a sample over several filters; null for any other. */
  @Nullable SampleSums of(InputRow row) {
    SampleSums group = row.sample().isEmpty() ? null : sums.get(row.sampleKey());
    return group != null && group.filters() > 1 ? group : null;
  }

  PairBook pairs() {
    return pairs;
  }
}
