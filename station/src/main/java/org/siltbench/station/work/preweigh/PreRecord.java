package org.siltbench.station.work.preweigh;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.LotState;
import org.siltbench.station.life.Stay;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.weigh.Measured;

/** Records masses of clean filters, if the rules of the job let them in. */
final class PreRecord {

  static final Said DRY_FIRST = Said.of(PreWeighSays.DRY_FIRST);

  private final Bench bench;
  private final Method method;

  PreRecord(Bench bench, Method method) {
    this.bench = bench;
    this.method = method;
  }

  /** A mass that counts. */
  Entry first(Turn turn, Measured seen) {
    return bench
        .act(
            register -> {
              FilterState filter = Filters.require(register, turn.filter());
              Life.require(filter.id(), filter.status(), Act.PRE_WEIGH, filter.role());
              requireRound(filter, turn.round());
              requireDried(register, filter);
              requireCooled(filter);
              requireFineEnough(seen);
              return List.of(draft(turn, "result", seen));
            })
        .get(0);
  }

  /** The same filter weighed again at once. */
  Entry repeat(Turn turn, Measured seen) {
    return bench
        .act(
            register -> {
              FilterState filter = Filters.require(register, turn.filter());
              Life.require(filter.id(), filter.status(), Act.REPEAT, filter.role());
              return List.of(draft(turn, "repeat", seen));
            })
        .get(0);
  }

  private static void requireRound(FilterState filter, int round) {
    if (filter.pre().size() + 1 != round) {
      throw new Problem.Refused(PreWeighSays.MEANWHILE, filter.id());
    }
  }

  private static void requireDried(RegisterView register, FilterState filter) {
    if (isUndried(register, filter)) {
      throw new Problem.Refused(PreWeighSays.LOT_NOT_DRIED, filter.id(), filter.lot(), DRY_FIRST);
    }
  }

  /**
   * Loaded filters are dried, so clean ones must have been: an undried clean mass makes every
   * residue too low. True if neither the lot nor a drying cycle of this bench has dried it.
   */
  static boolean isUndried(RegisterView register, FilterState filter) {
    boolean lot =
        LotState.fold(filter.lot(), register.history(About.lot(filter.lot())))
            .filter(LotState::undried)
            .isPresent();
    return lot && filter.lastPreStay().isEmpty();
  }

  private void requireCooled(FilterState filter) {
    OffsetDateTime now = OffsetDateTime.now(bench.clock());
    Stay stay = filter.lastPreStay().orElse(null);
    if (stay == null) {
      return;
    }
    if (stay.open()) {
      throw new Problem.Refused(PreWeighSays.CYCLE_OPEN, filter.id(), stay.cycle());
    }
    OffsetDateTime cooled = stay.cooledUntil().orElse(now);
    if (cooled.isAfter(now)) {
      long minutes = Duration.between(now, cooled).toMinutes() + 1;
      throw new Problem.Refused(PreWeighSays.NOT_COOLED, filter.id(), minutes);
    }
  }

  private void requireFineEnough(Measured seen) {
    Mass coarsest = method.constancy().coarsest();
    String step = seen.resolutionGrams();
    if (step != null && Mass.ofGrams(step).compareTo(coarsest) > 0) {
      throw new Problem.Refused(
          PreWeighSays.TOO_COARSE,
          new BigDecimal(step).movePointRight(3).toPlainString(),
          method.key(),
          coarsest.toMilligrams());
    }
  }

  static Draft draft(Turn turn, String purpose, Measured seen) {
    Facts facts =
        new Facts()
            .put("filter", turn.filter())
            .put("status", "pre")
            .put("round", turn.round())
            .put("purpose", purpose);
    if (!turn.dish().isEmpty()) {
      facts.put("dish", turn.dish());
    }
    seen.putInto(facts.fields());
    return facts.draft("weighing");
  }
}
