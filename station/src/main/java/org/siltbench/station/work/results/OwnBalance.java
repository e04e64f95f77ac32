package org.siltbench.station.work.results;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
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
    List<Double> differences = differences(filters);
    if (differences.size() >= ENOUGH_REPEATS) {
      return record(deviation(differences), differences.size(), described);
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

  /** Repeat less the mass it repeats, mg. */
  private static List<Double> differences(List<FilterState> filters) {
    List<Double> out = new ArrayList<>();
    for (FilterState filter : filters) {
      Weighed last = null;
      for (Weighed weighed : filter.weighings()) {
        if (weighed.forResult()) {
          last = weighed;
        } else if (weighed.purpose().equals("repeat") && last != null) {
          out.add(weighed.mass().minus(last.mass()).milligrams());
        }
      }
    }
    return out;
  }

  /** Standard deviation of one weighing from differences of pairs: √(Σd²/2n). */
  private static double deviation(List<Double> differences) {
    double sum = 0;
    for (double d : differences) {
      sum += d * d;
    }
    return Math.sqrt(sum / (2.0 * differences.size()));
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
