package org.siltbench.station.work.today;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Stay;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.work.check.CheckState;

/** Makes the list of what is due. */
public final class DueList {

  private static final Map<Status, Due.What> PLAIN =
      Map.of(
          Status.PLANNED, Due.What.PRE_WEIGH,
          Status.PRE_WEIGHED, Due.What.ISSUE,
          Status.ISSUED, Due.What.RECEIVE,
          Status.RECEIVED, Due.What.DRY,
          Status.POST_WEIGHED, Due.What.DRY_AGAIN,
          Status.CONSTANT, Due.What.RESULTS);

  /** So many carry their batch's name; beyond that nobody reads, and each name is a question. */
  private static final int NAMED = 50;

  private final RegisterView register;
  private final Clock clock;
  private final List<Due> list = new ArrayList<>();

  private DueList(RegisterView register, Clock clock) {
    this.register = register;
    this.clock = clock;
  }

  /**
   * What is due at a bench, the most pressing first.
   *
   * @param balance the balance's name, or empty where there is none
   */
  public static List<Due> of(RegisterView register, String balance, Clock clock) {
    DueList due = new DueList(register, clock);
    due.check(balance);
    PLAIN.forEach(due::plain);
    due.drying();
    due.list.sort(
        Comparator.comparing(Due::what)
            .thenComparing(d -> d.until().orElse(OffsetDateTime.MAX))
            .thenComparing(Due::batch));
    List<Due> named = due.list.subList(0, Math.min(NAMED, due.list.size()));
    named.replaceAll(due::named);
    return List.copyOf(due.list);
  }

  private void check(String balance) {
    boolean clear = CheckState.of(register, balance, LocalDate.now(clock), clock.getZone()).clear();
    if (!balance.isEmpty() && !clear) {
      list.add(new Due(Due.What.CHECK, "", 0, Optional.empty(), Optional.empty()));
    }
  }

  private void plain(Status status, Due.What what) {
    register
        .counts(About.FILTER, status.code())
        .forEach(
            (batch, count) ->
                list.add(new Due(what, batch, count, Optional.empty(), Optional.empty())));
  }

  private Due named(Due one) {
    return one.batch().isEmpty()
        ? one
        : new Due(one.what(), name(one.batch()), one.count(), one.from(), one.until());
  }

  private String name(String code) {
    return BatchState.fold(code, register.history(About.batch(code)))
        .map(BatchState::name)
        .orElse(code);
  }

  private record Load(Due.What what, String batch) implements Comparable<Load> {
    @Override
    public int compareTo(Load other) {
      return Comparator.comparing(Load::what).thenComparing(Load::batch).compare(this, other);
    }
  }

  private void drying() {
    Map<Load, List<Stay>> loads = new TreeMap<>();
    for (StateRow row : register.list(About.FILTER, "", Status.DRYING.code())) {
      Filters.find(register, row.subject().id())
          .flatMap(FilterState::lastStay)
          .ifPresent(
              stay ->
                  loads
                      .computeIfAbsent(new Load(what(stay), row.parent()), l -> new ArrayList<>())
                      .add(stay));
    }
    loads.forEach(
        (load, stays) ->
            list.add(
                new Due(
                    load.what(),
                    load.batch(),
                    stays.size(),
                    last(stays),
                    load.what() == Due.What.IN_OVEN ? Optional.empty() : first(stays))));
  }

  private Due.What what(Stay stay) {
    if (stay.open()) {
      return Due.What.IN_OVEN;
    }
    OffsetDateTime now = OffsetDateTime.now(clock);
    if (stay.cooledUntil().filter(now::isBefore).isPresent()) {
      return Due.What.COOLING;
    }
    boolean stale = stay.usefulUntil().filter(now::isAfter).isPresent();
    return stale ? Due.What.DRY_AGAIN : Due.What.POST_WEIGH;
  }

  private static Optional<OffsetDateTime> last(List<Stay> stays) {
    return stays.stream()
        .flatMap(stay -> stay.cooledUntil().stream())
        .max(Comparator.naturalOrder());
  }

  private static Optional<OffsetDateTime> first(List<Stay> stays) {
    return stays.stream()
        .flatMap(stay -> stay.usefulUntil().stream())
        .min(Comparator.naturalOrder());
  }
}
