package org.siltbench.station.work.results;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.Taken;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.result.BalanceRecord;
import org.siltbench.calc.result.BatchCalculation;
import org.siltbench.calc.result.BatchReport;
import org.siltbench.calc.result.InputFaults;
import org.siltbench.calc.result.InputRow;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.calc.result.RowRole;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Role;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.life.Series;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.VerdictRule;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.method.MethodBook;

/**
 * The results of a batch as they follow from the register now.
 *
 * @param batch the batch
 * @param method the numbers in force
 * @param balance what is known of the balance; null where the method's own figure is used
 * @param rows one a filter that has both masses, in the order of the batch
 * @param pending filters without a result yet, and why
 * @param report what the batch as a whole shows
 */
public record BatchResults(
    BatchState batch,
    Method method,
    @Nullable BalanceRecord balance,
    List<FilterResult> rows,
    Map<String, String> pending,
    BatchReport report) {

  /** A filter and its result. */
  public record FilterResult(FilterState state, ResultRow result) {

    /** The field notes' text of a column; empty without notes. */
    public String note(String column) {
      return state.record().map(record -> record.text(column)).orElse("");
    }
  }

  /**
   * Calculates.
   *
   * @throws Problem.Refused if a row cannot be calculated, with the reason
   */
  public static BatchResults of(Bench bench, MethodBook methods, BatchState batch) {
    return of(bench.register(), bench.clock().getZone(), bench.practice(), methods, batch);
  }

  static BatchResults of(
      RegisterView register, ZoneId zone, boolean practice, MethodBook methods, BatchState batch) {
    Method method = methods.inForce(register, batch.method());
    SeenFlags seen =
        new SeenFlags(register, batch, method, new CheckCover(register, zone), practice);
    List<FilterState> ready = new ArrayList<>();
    Map<String, String> pending = new LinkedHashMap<>();
    for (String id : batch.filters().keySet()) {
      Optional<FilterState> state = Filters.find(register, id);
      String why = state.map(BatchResults::missing).orElse("unknown");
      if (why.isEmpty()) {
        ready.add(state.orElseThrow());
      } else {
        pending.put(id, why);
      }
    }
    return calculate(register, zone, batch, method, seen, ready, pending);
  }

  /** What a filter lacks for a result; empty if nothing. */
  private static String missing(FilterState state) {
    if (state.status() == Status.REJECTED) {
      return "rejected: " + state.rejected();
    }
    if (state.missing()) {
      return "missing";
    }
    boolean complete =
        state.preMass().isPresent() && state.postMass().isPresent() && state.role() != Role.SPARE;
    return complete ? "" : state.status().code();
  }

  private static BatchResults calculate(
      RegisterView register,
      ZoneId zone,
      BatchState batch,
      Method method,
      SeenFlags seen,
      List<FilterState> ready,
      Map<String, String> pending) {
    List<InputRow> inputs = new ArrayList<>();
    AnalysisDays days = new AnalysisDays(register, zone);
    Extras extras = new Extras(register, batch.lot());
    ready.forEach(state -> inputs.add(input(state, seen, days, extras)));
    BalanceRecord balance = OwnBalance.of(register, ready);
    List<FilterResult> rows = new ArrayList<>();
    try {
      BatchReport report =
          new BatchCalculation(method, balance, days.beside(ready, method))
              .run(
                  inputs::forEach,
                  result -> rows.add(new FilterResult(ready.get(rows.size()), result)));
      return new BatchResults(batch, method, balance, List.copyOf(rows), pending, report);
    } catch (InputFaults e) {
      throw new Problem.Refused(ResultsSays.NOT_CALCULATED, batch.name(), Elsewhere.words(e));
    }
  }

  private static InputRow input(
      FilterState state, SeenFlags seen, AnalysisDays days, Extras extras) {
    List<Weighed> series = Series.onePerCycle(state.post());
    InputRow.Builder row =
        InputRow.of(state.id(), role(state))
            .pre(state.preMass().map(Weighed::mass).orElse(null))
            .posts(series.stream().map(Weighed::mass).toList())
            .resolution(resolution(series))
            .seen(seen.of(state))
            .analysed(days.of(state))
            .extras(extras.of(state));
    state.record().ifPresent(record -> notes(row, record));
    return row.build();
  }

  private static @Nullable Mass resolution(List<Weighed> series) {
    return VerdictRule.coarsestStep(series);
  }

  private static RowRole role(FilterState state) {
    RowRole role = RowRole.of(state.role().code());
    if (role == null) {
      throw new IllegalStateException("a filter with role " + state.role() + " has no result");
    }
    return role;
  }

  private static void notes(InputRow.Builder row, SampleRecord record) {
    row.sample(record.sample())
        .pair(record.text("pair"), record.text("pair_kind"))
        .volume(record.volume().orElse(null))
        .volumeU(record.fields().decimal("volume_u_ml").map(u -> u.doubleValue()).orElse(null))
        .taken(taken(record.text("taken")));
  }

  private static @Nullable Taken taken(String word) {
    for (Taken taken : Taken.values()) {
      if (taken.word().equals(word)) {
        return taken;
      }
    }
    return null;
  }
}
