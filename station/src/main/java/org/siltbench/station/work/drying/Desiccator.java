package org.siltbench.station.work.drying;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Stay;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.StateRow;

/** What has left the oven and waits in the desiccator to be weighed. */
public final class Desiccator {

  private Desiccator() {}

  /** Where a load stands. */
  public enum Readiness {
    COOLING,
    READY,
    STALE
  }

  /**
   * Filters that left the oven together.
   *
   * @param cycle their cycle
   * @param dishes filter to dish
   * @param out when they left the oven
   * @param cooledUntil not to be weighed before
   * @param usefulUntil not to be weighed after
   */
  public record Cooling(
      String cycle,
      Map<String, String> dishes,
      OffsetDateTime out,
      OffsetDateTime cooledUntil,
      OffsetDateTime usefulUntil) {

    /** Whether it may be weighed at this moment. */
    public Readiness at(OffsetDateTime now) {
      if (now.isBefore(cooledUntil)) {
        return Readiness.COOLING;
      }
      return now.isAfter(usefulUntil) ? Readiness.STALE : Readiness.READY;
    }

    /** Time until it changes: has cooled, or is stale; none after that. */
    public Duration left(OffsetDateTime now) {
      return switch (at(now)) {
        case COOLING -> Duration.between(now, cooledUntil);
        case READY -> Duration.between(now, usefulUntil);
        case STALE -> Duration.ZERO;
      };
    }
  }

  private record Together(
      String cycle, OffsetDateTime out, OffsetDateTime cooled, OffsetDateTime useful) {}

  /** The loads, the one that goes stale first in front. */
  public static List<Cooling> loads(RegisterView register) {
    Map<Together, Map<String, String>> found = new LinkedHashMap<>();
    for (StateRow row : register.list(About.FILTER, "", Status.DRYING.code())) {
      Filters.find(register, row.subject().id()).ifPresent(state -> add(found, state));
    }
    List<Cooling> loads = new ArrayList<>();
    found.forEach(
        (t, dishes) -> loads.add(new Cooling(t.cycle(), dishes, t.out(), t.cooled(), t.useful())));
    loads.sort(Comparator.comparing(Cooling::usefulUntil).thenComparing(Cooling::cycle));
    return List.copyOf(loads);
  }

  private static void add(Map<Together, Map<String, String>> found, FilterState state) {
    for (Stay stay : state.lastStay().stream().toList()) {
      for (OffsetDateTime out : stay.out().stream().toList()) {
        Together key =
            new Together(
                stay.cycle(), out, stay.cooledUntil().orElse(out), stay.usefulUntil().orElse(out));
        found.computeIfAbsent(key, k -> new LinkedHashMap<>()).put(state.id(), stay.dish());
      }
    }
  }
}
