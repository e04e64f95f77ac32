package org.siltbench.station.work.results;

import java.util.ArrayList;
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

/** What the bench knows of the balance behind a batch: its own re-weighings, and its record. */
final class OwnBalance {

  private static final int ENOUGH_REPEATS = 6;
  private static final double RECORD_DOF = 9;

  /** Glass fibre, kg/m³: a handbook figure, from memory. */
  private static final double FILTER_DENSITY = 2500;

  /** Change of air density in a room between two weeks, kg/m³: an estimate from weather. */
  private static final double AIR_CHANGE = 0.02;

  private OwnBalance() {}

  /** The record; null where too little is known, so that the method's own figure stands. */
  static @Nullable BalanceRecord of(RegisterView register, List<FilterState> filters) {
    Optional<Fields> described =
        mostUsed(filters)
            .flatMap(name -> BalanceState.fold(name, register.history(About.balance(name))))
            .flatMap(BalanceState::described);
    List<DuplicatePair> repeats = repeats(filters);
    if (repeats.size() >= ENOUGH_REPEATS) {
      return record(DuplicatePair.deviation(repeats), repeats.size(), described);
    }
    double stated = described.map(f -> f.number("repeatability_mg", 0)).orElse(0.0);
    return stated > 0 ? record(stated, RECORD_DOF, described) : null;
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

  private static BalanceRecord record(double sd, double dof, Optional<Fields> described) {
    return new BalanceRecord(
        sd,
        dof,
        described.map(f -> f.number("linearity_mg", 0)).orElse(0.0),
        described.map(f -> f.number("eccentricity_mg", 0)).orElse(0.0),
        0,
        0,
        AIR_CHANGE,
        FILTER_DENSITY);
  }
}
