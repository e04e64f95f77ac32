package org.siltbench.station.work.drying;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.method.MethodBook;

/**
 * A running cycle and how its day is planned.
 *
 * @param cycle the cycle
 * @param loads how its filters leave the oven, one desiccator load after the other
 * @param earliestOut when the first load may leave
 */
public record CyclePlan(CycleState cycle, List<Load> loads, OffsetDateTime earliestOut) {

  /** Copies the list. */
  public CyclePlan {
    loads = List.copyOf(loads);
  }

  /** Every cycle with filters in the oven, by id. */
  public static List<CyclePlan> running(RegisterView register, MethodBook methods) {
    return DryCycles.open(register).stream().map(cycle -> of(register, methods, cycle)).toList();
  }

  /** The plan of a cycle for those that are still in the oven. */
  public static CyclePlan of(RegisterView register, MethodBook methods, CycleState cycle) {
    Times times = Times.of(heated(register, methods, cycle.inside()), Purpose.of(cycle.purpose()));
    OffsetDateTime earliest = cycle.in().plus(times.dry());
    return new CyclePlan(cycle, Load.plan(List.copyOf(cycle.inside()), earliest, times), earliest);
  }

  /** The loads that these filters would make if their clock started at this moment. */
  public static List<Load> ahead(
      RegisterView register,
      MethodBook methods,
      List<String> filters,
      Purpose purpose,
      OffsetDateTime in) {
    if (filters.isEmpty()) {
      return List.of();
    }
    Times times = Times.of(heated(register, methods, filters), purpose);
    return Load.plan(filters, in.plus(times.dry()), times);
  }

  static List<Heated> heated(
      RegisterView register, MethodBook methods, Collection<String> filters) {
    List<Heated> all = new ArrayList<>();
    for (String filter : filters) {
      FilterState state = Filters.require(register, filter);
      all.add(new Heated(state, methods.inForce(register, state.method())));
    }
    return all;
  }

  /** Time until the first load may leave; nothing or less once it may. */
  public Duration left(OffsetDateTime now) {
    return Duration.between(now, earliestOut);
  }

  /** True once the first load may leave the oven. */
  public boolean mayLeave(OffsetDateTime now) {
    return !now.isBefore(earliestOut);
  }
}
