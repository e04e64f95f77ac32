package org.siltbench.station.work.results;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.result.AnalyticalDays;
import org.siltbench.calc.result.RowRole;
import org.siltbench.station.life.About;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Series;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.drying.DryCycles;

/**
 * On which day a filter was analysed, and what else was analysed under the same method on such
 * days: an analytical batch is a method's day, not a batch of bags.
 */
final class AnalysisDays {

  /**
   * A filter is weighed within so many days of leaving the oven, or it has gone stale long since.
   */
  private static final int MOST_DAYS_AFTER = 3;

  private final RegisterView register;
  private final ZoneId zone;

  AnalysisDays(RegisterView register, ZoneId zone) {
    this.register = register;
    this.zone = zone;
  }

  /** The day of the last post-weighing; empty without one. */
  String of(FilterState state) {
    List<Weighed> series = Series.onePerCycle(state.post());
    return series.isEmpty() ? "" : day(series.get(series.size() - 1)).toString();
  }

  private LocalDate day(Weighed weighed) {
    return weighed.at().atZoneSameInstant(zone).toLocalDate();
  }

  /** Samples and blanks of other batches on the days of these filters. */
  AnalyticalDays beside(List<FilterState> filters, Method method) {
    Set<String> own = new HashSet<>();
    Set<String> days = new HashSet<>();
    for (FilterState filter : filters) {
      own.add(filter.id());
      days.add(of(filter));
    }
    AnalyticalDays out = new AnalyticalDays();
    for (String id : candidates(days)) {
      if (own.add(id)) {
        Filters.find(register, id)
            .filter(state -> state.method().equals(method.key()) && days.contains(of(state)))
            .ifPresent(state -> count(out, state, method));
      }
    }
    return out;
  }

  /** Filters that left an oven shortly before one of the days. */
  private Set<String> candidates(Set<String> days) {
    Set<String> out = new HashSet<>();
    register
        .list(About.CYCLE, "", "")
        .forEach(
            row ->
                DryCycles.find(register, row.subject().id())
                    .filter(cycle -> cycle.purpose().equals("post") && isNear(cycle, days))
                    .ifPresent(cycle -> out.addAll(cycle.dishes().keySet())));
    return out;
  }

  private boolean isNear(CycleState cycle, Set<String> days) {
    if (cycle.out().isEmpty()) {
      return false;
    }
    LocalDate day = cycle.out().get().atZoneSameInstant(zone).toLocalDate();
    for (int after = 0; after <= MOST_DAYS_AFTER; after++) {
      if (days.contains(day.plusDays(after).toString())) {
        return true;
      }
    }
    return false;
  }

  private void count(AnalyticalDays out, FilterState state, Method method) {
    Optional<RowRole> role = Optional.ofNullable(RowRole.of(state.role().code()));
    boolean sample = role.filter(r -> r == RowRole.SAMPLE).isPresent();
    boolean blank = role.filter(r -> r.blankKind() == method.blank().kind()).isPresent();
    out.add(of(state), sample ? 1 : 0, blank ? 1 : 0);
  }
}
