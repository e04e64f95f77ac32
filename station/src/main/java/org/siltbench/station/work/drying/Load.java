package org.siltbench.station.work.drying;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * What goes into the desiccator together: as many as can be weighed before they go stale.
 *
 * @param number its number, from 1
 * @param filters what is in it
 * @param out when it should leave the oven
 * @param cooledUntil not to be weighed before
 * @param usefulUntil not to be weighed after
 */
public record Load(
    int number,
    List<String> filters,
    OffsetDateTime out,
    OffsetDateTime cooledUntil,
    OffsetDateTime usefulUntil) {

  /** The most that one desiccator takes: common practice, from experience. */
  static final int MOST = 22;

  /** What one weighing takes with tweezers, door and settling: common practice, from experience. */
  static final Duration PER_WEIGHING = Duration.ofSeconds(90);

  /** Copies the list. */
  public Load {
    filters = List.copyOf(filters);
  }

  /** Plans loads: each leaves the oven when the one before it has been weighed. */
  static List<Load> plan(List<String> filters, OffsetDateTime earliest, Times times) {
    int size = size(times);
    List<Load> loads = new ArrayList<>();
    OffsetDateTime out = earliest;
    for (int from = 0; from < filters.size(); from += size) {
      List<String> some = filters.subList(from, Math.min(filters.size(), from + size));
      loads.add(
          new Load(loads.size() + 1, some, out, out.plus(times.cool()), out.plus(times.useful())));
      out = out.plus(PER_WEIGHING.multipliedBy(some.size()));
    }
    return loads;
  }

  private static int size(Times times) {
    long fits = times.useful().minus(times.cool()).dividedBy(PER_WEIGHING);
    return (int) Math.max(1, Math.min(MOST, fits));
  }
}
