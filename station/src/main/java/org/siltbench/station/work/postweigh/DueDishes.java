package org.siltbench.station.work.postweigh;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Stay;
import org.siltbench.station.register.RegisterView;

/** The dishes whose filters wait to be post-weighed, and what lies in them. */
public final class DueDishes {

  private final Map<String, Set<String>> filters = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

  private DueDishes() {}

  /**
   * The dishes that wait now.
   *
   * @param expected the filters expected, or empty for any
   */
  public static DueDishes of(RegisterView register, Optional<Set<String>> expected) {
    DueDishes out = new DueDishes();
    register.list(About.FILTER, "", Status.DRYING.code()).stream()
        .map(row -> row.subject().id())
        .filter(id -> expected.map(set -> set.contains(id)).orElse(true))
        .flatMap(id -> Filters.find(register, id).stream())
        .forEach(out::add);
    return out;
  }

  private void add(FilterState state) {
    String dish = state.lastStay().filter(stay -> !stay.open()).map(Stay::dish).orElse("");
    if (!dish.isEmpty()) {
      filters.computeIfAbsent(dish, none -> new TreeSet<>()).add(state.id());
    }
  }

  /** Their names. */
  public Set<String> names() {
    return filters.keySet();
  }

  /**
   * The filter in a dish; empty where no such dish waits.
   *
   * @throws Problem.Refused if dishes of several cycles have this name
   */
  Optional<String> filter(String dish) {
    List<String> inside = List.copyOf(filters.getOrDefault(dish.strip(), Set.of()));
    if (inside.size() > 1) {
      throw new Problem.Refused(
          PostWeighSays.DISH_AMBIGUOUS, dish.strip(), String.join(", ", inside));
    }
    return inside.stream().findFirst();
  }
}
