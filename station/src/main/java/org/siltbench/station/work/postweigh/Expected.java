package org.siltbench.station.work.postweigh;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Series;
import org.siltbench.station.life.Stay;
import org.siltbench.station.life.VerdictRule;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.drying.Cooled;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.scan.BagScan;

/**
 * A filter that may be post-weighed now: right bag, right status, cooled, not stale.
 *
 * @param state what is known of it
 * @param method its method's numbers
 * @param stay its last drying cycle
 * @param hint what the person should know, or empty
 */
record Expected(FilterState state, Method method, Stay stay, Words hint) {

  private static final Words NOTHING = Said.of(PostWeighSays.NOTHING_FOR_IT);

  /**
   * Judges a scan before anything is put on the pan, and again at the moment of recording.
   *
   * @param set the filters expected, or empty for any
   * @param now the moment of weighing
   * @throws Problem.Refused with the reason and the way out
   */
  static Expected of(
      RegisterView register,
      MethodBook methods,
      BagScan bag,
      Optional<Set<String>> set,
      boolean repeat,
      OffsetDateTime now) {
    String id = bag.filter().text();
    FilterState state = Filters.require(register, id);
    if (set.isPresent() && !set.get().contains(id)) {
      throw new Problem.Refused(PostWeighSays.WRONG_BAG, id, state.batch());
    }
    Words hint = bag.compare(state);
    Life.require(id, state.status(), repeat ? Act.REPEAT : Act.POST_WEIGH, state.role());
    Stay stay = Cooled.require(state, now, NOTHING);
    return new Expected(state, methods.inForce(register, state.method()), stay, hint);
  }

  /** The verdict with one more mass, read in steps of the given size. */
  ConstantVerdict verdictWith(Mass mass, Mass resolution) {
    List<Weighed> before = before();
    List<Mass> masses = new ArrayList<>(before.stream().map(Weighed::mass).toList());
    masses.add(mass);
    return method.constancy().judgePost(masses, preMass(), coarser(before, resolution));
  }

  private @Nullable Mass preMass() {
    return state.preMass().map(Weighed::mass).orElse(null);
  }

  private static Mass coarser(List<Weighed> before, Mass resolution) {
    Mass other =
        before.isEmpty()
            ? null
            : VerdictRule.coarsestStep(before.subList(before.size() - 1, before.size()));
    return other != null && other.compareTo(resolution) > 0 ? other : resolution;
  }

  /** One mass for each earlier cycle. */
  private List<Weighed> before() {
    List<Weighed> counting = ignition() ? state.ignited() : state.post();
    return Series.onePerCycle(counting).stream()
        .filter(weighed -> !weighed.cycle().equals(stay.cycle()))
        .toList();
  }

  private boolean ignition() {
    return stay.purpose().equals("ignition");
  }

  /** The how-manieth drying this weighing follows. */
  int round() {
    return before().size() + 1;
  }

  /** Mass gain since the pre-weighing. */
  Mass residue(Mass mass) {
    return mass.minus(state.preMass().map(Weighed::mass).orElse(Mass.ZERO));
  }
}
