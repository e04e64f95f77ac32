package org.siltbench.station.work.preweigh;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.life.About;
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

  /**
   * True if the clean filter's mass may be used: weighed once and not tested, or constant; false
   * where its own weighings say that it is not dry.
   */
  public static boolean isUsable(FilterState filter, Method method) {
    return constancy(filter, method) != ConstantVerdict.Kind.DRY_AGAIN && !filter.pre().isEmpty();
  }

  /** The word for the clean filter's masses; not tested where the method has no rule. */
  public static ConstantVerdict.Kind constancy(FilterState filter, Method method) {
    return verdict(filter, method).kind();
  }

  /**
   * The filters whose one mass has nothing to show that it is constant, though the method asks for
   * it: neither they nor any other filter of their lot were dried and weighed again with no more
   * change than the rule allows.
   */
  public static List<FilterState> unproven(
      RegisterView register, List<FilterState> filters, Method method) {
    if (method.constancy().preRule() == null) {
      return List.of();
    }
    return filters.stream()
        .filter(filter -> !isConstant(filter, method))
        .filter(filter -> !lotProven(register, filter.lot(), method))
        .toList();
  }

  /** True if some filter of the lot met the rule and none broke it. */
  public static boolean lotProven(RegisterView register, String lot, Method method) {
    List<ConstantVerdict.Kind> kinds =
        register.list(About.BATCH, lot, "").stream()
            .flatMap(row -> Filters.ofBatch(register, row.subject().id()).stream())
            .map(filter -> constancy(filter, method))
            .toList();
    return kinds.contains(ConstantVerdict.Kind.CONSTANT)
        && !kinds.contains(ConstantVerdict.Kind.DRY_AGAIN);
  }

  /** The verdict over the clean filter's masses. */
  public static ConstantVerdict verdict(FilterState filter, Method method) {
    List<Mass> masses = filter.pre().stream().map(Weighed::mass).toList();
    return method.constancy().judgePre(masses, null);
  }

  private static boolean driedSince(FilterState filter) {
    OffsetDateTime weighed = filter.preMass().map(Weighed::at).orElseThrow();
    return filter.lastPreStay().flatMap(Stay::out).filter(out -> out.isAfter(weighed)).isPresent();
  }
}
