package org.siltbench.station.work.preweigh;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Stay;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;

/**
 * Which filters of a batch still need a mass.
 *
 * @param due those to be weighed now, in order
 * @param waiting those whose masses are not constant yet and that have not been dried since
 * @param done those that need nothing more
 */
public record PrePlan(List<Turn> due, List<FilterState> waiting, List<FilterState> done) {

  /** Copies the lists. */
  public PrePlan {
    due = List.copyOf(due);
    waiting = List.copyOf(waiting);
    done = List.copyOf(done);
  }

  /** The plan for a batch; where the method has no rule one mass is enough. */
  public static PrePlan of(RegisterView register, BatchState batch, Method method) {
    List<Turn> first = new ArrayList<>();
    List<Turn> later = new ArrayList<>();
    List<FilterState> waiting = new ArrayList<>();
    List<FilterState> done = new ArrayList<>();
    int place = 0;
    for (String id : batch.filters().keySet()) {
      place++;
      FilterState filter = Filters.require(register, id);
      if (filter.status() != Status.PLANNED && filter.status() != Status.PRE_WEIGHED) {
        continue;
      }
      String dish = method.constancy().preRule() == null ? "" : Integer.toString(place);
      int round = filter.pre().size() + 1;
      if (round == 1) {
        first.add(new Turn(id, round, dish));
      } else if (isConstant(filter, method)) {
        done.add(filter);
      } else if (driedSince(filter)) {
        later.add(new Turn(id, round, dish));
      } else {
        waiting.add(filter);
      }
    }
    first.addAll(later);
    return new PrePlan(first, waiting, done);
  }

  /** The IDs of the first few that are due. */
  public List<String> first(int most) {
    return due.stream().limit(most).map(Turn::filter).toList();
  }

  /** True if the clean filter's mass may be used: the rule is met, or there is none. */
  public static boolean isConstant(FilterState filter, Method method) {
    boolean once = method.constancy().preRule() == null;
    return !filter.pre().isEmpty() && (once || verdict(filter, method).isConstant());
  }

  /** The verdict over the clean filter's masses. */
  public static ConstantVerdict verdict(FilterState filter, Method method) {
    List<Mass> masses = filter.pre().stream().map(Weighed::mass).toList();
    return method.constancy().judgePre(masses, null);
  }

  private static boolean driedSince(FilterState filter) {
    OffsetDateTime weighed = filter.preMass().map(Weighed::at).orElseThrow();
    return lastPreStay(filter).flatMap(Stay::out).filter(out -> out.isAfter(weighed)).isPresent();
  }

  /** The newest drying cycle of the clean filter. */
  static Optional<Stay> lastPreStay(FilterState filter) {
    List<Stay> clean = filter.stays().stream().filter(Stay::pre).toList();
    return clean.isEmpty() ? Optional.empty() : Optional.of(clean.get(clean.size() - 1));
  }
}
