package org.siltbench.station.work.issue;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Names;
import org.siltbench.station.work.preweigh.PrePlan;

/** Gives bags out to a trip and takes unused ones back. */
public final class Issue {

  private final Bench bench;
  private final BatchState batch;
  private final String trip;

  public Issue(Bench bench, BatchState batch, String trip) {
    this.bench = bench;
    this.batch = batch;
    this.trip = Names.check("trip", trip);
  }

  /**
   * Gives out.
   *
   * @param filters which; empty for all that are ready and may leave the lab
   * @param to who takes them, or null
   * @param out when, if not now
   * @param seals seal numbers, or null
   */
  public Entry out(
      Method method,
      List<String> filters,
      @Nullable String to,
      @Nullable OffsetDateTime out,
      @Nullable String seals) {
    return bench
        .act(
            register -> {
              List<String> going = filters.isEmpty() ? ready(register, method) : filters;
              going.forEach(id -> requireReady(register, id, method));
              Facts facts = facts(going).putIf("to", to);
              OffsetDateTime when = out == null ? OffsetDateTime.now(bench.clock()) : out;
              facts.put("out", Facts.time(when)).put("observed", out == null);
              return List.of(facts.putIf("seals", seals).draft("batch.issued"));
            })
        .get(0);
  }

  private Facts facts(List<String> filters) {
    return new Facts().put("batch", batch.code()).put("trip", trip).put("filters", filters);
  }

  private List<String> ready(RegisterView register, Method method) {
    List<String> ready =
        Filters.ofBatch(register, batch.code()).stream()
            .filter(filter -> filter.status() == Status.PRE_WEIGHED)
            .filter(filter -> !Life.BENCH_ROLES.contains(filter.role()))
            .filter(filter -> PrePlan.isUsable(filter, method))
            .map(FilterState::id)
            .toList();
    if (ready.isEmpty()) {
      throw new Problem.Refused(IssueSays.NONE_READY, batch.name());
    }
    return ready;
  }

  private void requireReady(RegisterView register, String id, Method method) {
    FilterState filter = ofBatch(register, id);
    Life.require(id, filter.status(), Act.ISSUE, filter.role());
    if (!PrePlan.isUsable(filter, method)) {
      throw new Problem.Refused(IssueSays.NOT_CONSTANT, id);
    }
  }

  private FilterState ofBatch(RegisterView register, String id) {
    FilterState filter = Filters.require(register, id);
    if (!filter.batch().equals(batch.code())) {
      throw new Problem.Refused(IssueSays.OTHER_BATCH, id, filter.batch());
    }
    return filter;
  }

  /**
   * Takes unused bags back to stock.
   *
   * @param filters which; empty for all of the batch that are still out on the trip
   */
  public Entry back(List<String> filters) {
    return bench
        .act(
            register -> {
              List<String> coming = filters.isEmpty() ? stillOut(register) : filters;
              coming.forEach(id -> requireOut(register, id));
              return List.of(facts(coming).draft("batch.returned"));
            })
        .get(0);
  }

  private List<String> stillOut(RegisterView register) {
    List<String> out =
        Filters.ofBatch(register, batch.code()).stream()
            .filter(filter -> filter.status() == Status.ISSUED && filter.trip().equals(trip))
            .map(FilterState::id)
            .toList();
    if (out.isEmpty()) {
      throw new Problem.Refused(IssueSays.NONE_OUT, batch.name(), trip);
    }
    return out;
  }

  private void requireOut(RegisterView register, String id) {
    FilterState filter = ofBatch(register, id);
    Life.require(id, filter.status(), Act.RETURN, filter.role());
    if (!filter.trip().equals(trip)) {
      throw new Problem.Refused(IssueSays.OTHER_TRIP, id, filter.trip(), trip);
    }
  }
}
