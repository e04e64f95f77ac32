package org.siltbench.station.work.results;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.duplicates.DuplicatePair;
import org.siltbench.calc.result.BalanceRecord;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.equip.Certificates;
import org.siltbench.station.work.equip.RoomAir;

/** What the bench knows of the balance behind a batch: its own re-weighings, and its record. */
final class OwnBalance {

  private static final int ENOUGH_REPEATS = 6;
  private static final double RECORD_DOF = 9;

  /** Glass fibre, kg/m³: a handbook figure, from memory. */
  private static final double FILTER_DENSITY = 2500;

  /** Change of air density in a room between two weeks, kg/m³: an estimate from weather. */
  private static final double AIR_CHANGE = 0.02;

  private static final Comparator<OffsetDateTime> BY_INSTANT =
      Comparator.comparing(OffsetDateTime::toInstant);

  private final Optional<Fields> described;
  private final Optional<Certificates> weight;
  private final double airChange;

  private OwnBalance(Optional<Fields> described, Optional<Certificates> weight, double airChange) {
    this.described = described;
    this.weight = weight;
    this.airChange = airChange;
  }

  /** The record; null where too little is known, so that the method's own figure stands. */
  static @Nullable BalanceRecord of(RegisterView register, List<FilterState> filters) {
    Optional<BalanceState> state =
        mostUsed(filters)
            .flatMap(name -> BalanceState.fold(name, register.history(About.balance(name))));
    Optional<Fields> described = state.flatMap(BalanceState::described);
    OwnBalance own =
        new OwnBalance(described, certificates(register, state), air(register, filters));
    List<DuplicatePair> repeats = repeats(filters);
    if (repeats.size() >= ENOUGH_REPEATS) {
      return own.record(DuplicatePair.deviation(repeats), repeats.size());
    }
    double stated = described.map(f -> f.number("repeatability_mg", 0)).orElse(0.0);
    return stated > 0 ? own.record(stated, RECORD_DOF) : null;
  }

  /** Those of the weight that the balance was last checked with. */
  private static Optional<Certificates> certificates(
      RegisterView register, Optional<BalanceState> state) {
    return state
        .flatMap(BalanceState::lastCheck)
        .map(check -> check.fields().text("weight"))
        .filter(name -> !name.isEmpty())
        .map(name -> Certificates.of(register, name));
  }

  /** What the room's notes say of the air from the first weighing to the last; else an estimate. */
  private static double air(RegisterView register, List<FilterState> filters) {
    List<Weighed> all = filters.stream().flatMap(f -> f.weighings().stream()).toList();
    if (all.isEmpty()) {
      return AIR_CHANGE;
    }
    OffsetDateTime first = all.stream().map(Weighed::at).min(BY_INSTANT).orElseThrow();
    OffsetDateTime last = all.stream().map(Weighed::at).max(BY_INSTANT).orElseThrow();
    return RoomAir.of(register, all.get(0).ref().bench())
        .changeWithin(first, last)
        .orElse(AIR_CHANGE);
  }

  private static Optional<String> mostUsed(List<FilterState> filters) {
    Map<String, Integer> uses = new TreeMap<>();
    for (FilterState filter : filters) {
      filter.weighings().forEach(w -> uses.merge(w.balance(), 1, Integer::sum));
    }
    return uses.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
  }

  /** A mass, counted from itself, and its repeat less it, mg: the difference is taken exactly. */
  private static List<DuplicatePair> repeats(List<FilterState> filters) {
    List<DuplicatePair> out = new ArrayList<>();
    for (FilterState filter : filters) {
      Weighed last = null;
      for (Weighed weighed : filter.weighings()) {
        if (weighed.forResult()) {
          last = weighed;
        } else if (weighed.purpose().equals("repeat") && last != null) {
          out.add(new DuplicatePair(0, weighed.mass().minus(last.mass()).milligrams()));
        }
      }
    }
    return out;
  }

  private BalanceRecord record(double sd, double dof) {
    return new BalanceRecord(
        sd,
        dof,
        described.map(f -> f.number("linearity_mg", 0)).orElse(0.0),
        described.map(f -> f.number("eccentricity_mg", 0)).orElse(0.0),
        weight.map(Certificates::relativeUncertainty).orElse(0.0),
        weight.map(Certificates::relativeDrift).orElse(0.0),
        airChange,
        FILTER_DENSITY);
  }
}
