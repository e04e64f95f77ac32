package org.siltbench.station.work.drying;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.lot.LotFitness;
import org.siltbench.station.work.method.MethodBook;

/**
 * Filters go into the oven.
 *
 * @param dishes filter to dish, in order; a dish may be empty
 * @param purpose why
 * @param heat what the thermometer said when the oven was back in range
 * @param in that moment as stated by a person; null for now
 * @param joins the running cycle to be joined, or empty for a new one
 * @param restart joining restarts the clock of all in it
 */
public record DryStart(
    Map<String, String> dishes,
    Purpose purpose,
    Heat heat,
    @Nullable OffsetDateTime in,
    String joins,
    boolean restart) {

  /** Keeps the order. */
  public DryStart {
    dishes = new LinkedHashMap<>(dishes);
  }

  /**
   * A cycle that runs.
   *
   * @param cycle the cycle
   * @param loads how its day is planned
   * @param earliestOut when the first load may leave the oven
   * @param warnings what to know
   * @param entry the ledger entry
   */
  public record Started(
      CycleState cycle,
      List<Load> loads,
      OffsetDateTime earliestOut,
      List<Words> warnings,
      Entry entry) {}

  /** Records it; a cycle that is joined by none has its clock restarted, no more. */
  public Started record(Bench bench, MethodBook methods) {
    if (dishes.isEmpty() && joins.isEmpty()) {
      throw new Problem.WrongUse(DryingSays.NONE_NAMED);
    }
    Entry entry = bench.act(register -> List.of(draft(register, bench, methods))).get(0);
    return started(bench, methods, entry);
  }

  private Draft draft(RegisterView register, Bench bench, MethodBook methods) {
    Map<String, Heated> all = new LinkedHashMap<>();
    dishes.keySet().forEach(id -> all.put(id, admitted(register, methods, purpose, id)));
    Optional<CycleState> running = running(register);
    running.ifPresent(cycle -> joining(cycle, register, methods, all));
    heat.fault(all.values(), purpose)
        .ifPresent(
            fault -> {
              throw new Problem.Refused(fault.code(), fault.gaps().toArray());
            });
    Map<String, String> placed = placed(running);
    Dishes.requireOneEach(placed);
    String id = running.map(CycleState::id).orElse(DryCycles.next(register, bench.code()));
    return facts(id, placed, now(bench)).draft("dry.started");
  }

  /**
   * A filter that may go into the oven now.
   *
   * @throws Problem.Refused if it is in one already, or its status or method does not allow it
   */
  public static FilterState admit(
      RegisterView register, MethodBook methods, Purpose purpose, String id) {
    Heated heated = admitted(register, methods, purpose, id);
    purpose.range(heated.method());
    return heated.state();
  }

  private static Heated admitted(
      RegisterView register, MethodBook methods, Purpose purpose, String id) {
    FilterState state = Filters.require(register, id);
    state
        .openStay()
        .ifPresent(
            stay -> {
              throw new Problem.Refused(DryingSays.IN_OVEN, id, stay.cycle());
            });
    Life.require(id, state.status(), purpose.act(), state.role());
    if (purpose == Purpose.IGNITION) {
      LotFitness.requireForFurnace(register, state.lot(), id);
    }
    return new Heated(state, methods.inForce(register, state.method()));
  }

  private Optional<CycleState> running(RegisterView register) {
    if (joins.isEmpty()) {
      return Optional.empty();
    }
    CycleState cycle = DryCycles.require(register, joins);
    if (!cycle.open()) {
      throw new Problem.Refused(DryingSays.JOINS_ENDED, joins);
    }
    if (!cycle.purpose().equals(purpose.code())) {
      throw new Problem.Refused(DryingSays.JOINS_OTHER, joins, cycle.purpose());
    }
    if (!restart) {
      throw new Problem.Refused(DryingSays.WET);
    }
    return Optional.of(cycle);
  }

  private void joining(
      CycleState cycle, RegisterView register, MethodBook methods, Map<String, Heated> all) {
    CyclePlan.heated(register, methods, cycle.inside())
        .forEach(one -> all.put(one.state().id(), one));
  }

  private Map<String, String> placed(Optional<CycleState> running) {
    Map<String, String> out = new LinkedHashMap<>();
    running.ifPresent(
        cycle ->
            cycle
                .dishes()
                .forEach(
                    (id, dish) -> {
                      if (cycle.inside().contains(id)) {
                        out.put(id, dish);
                      }
                    }));
    out.putAll(dishes);
    return out;
  }

  private OffsetDateTime now(Bench bench) {
    OffsetDateTime stated = in;
    return stated != null ? stated : OffsetDateTime.now(bench.clock());
  }

  private Facts facts(String cycle, Map<String, String> placed, OffsetDateTime since) {
    List<Map<String, String>> rows = new ArrayList<>();
    placed.forEach((id, dish) -> rows.add(dish.isEmpty() ? Map.of("filter", id) : row(id, dish)));
    Facts facts =
        new Facts()
            .put("cycle", cycle)
            .put("filters", rows)
            .put("purpose", purpose.code())
            .put("in", Facts.time(since))
            .putIf("temperature_c", heat.celsius());
    if (!heat.thermometer().isEmpty()) {
      facts.put("thermometer", heat.thermometer());
    }
    return facts.put("observed", in == null);
  }

  private static Map<String, String> row(String id, String dish) {
    Map<String, String> row = new LinkedHashMap<>();
    row.put("filter", id);
    row.put("dish", dish);
    return row;
  }

  private Started started(Bench bench, MethodBook methods, Entry entry) {
    RegisterView register = bench.register();
    CycleState cycle = DryCycles.require(register, Fields.of(entry).text("cycle"));
    CyclePlan plan = CyclePlan.of(register, methods, cycle);
    List<Heated> all = CyclePlan.heated(register, methods, cycle.inside());
    return new Started(cycle, plan.loads(), plan.earliestOut(), warnings(cycle, all), entry);
  }

  private List<Words> warnings(CycleState cycle, List<Heated> all) {
    List<Words> out = new ArrayList<>();
    if (heat.celsius() == null) {
      out.add(Said.of(DryingSays.NO_TEMPERATURE));
    }
    for (Heated one : all) {
      boolean weighedSince =
          one.state().weighings().stream().anyMatch(w -> w.at().isAfter(cycle.in()));
      if (weighedSince) {
        out.add(Said.of(DryingSays.WEIGHED_AFTER, one.state().id()));
      }
    }
    return out;
  }
}
