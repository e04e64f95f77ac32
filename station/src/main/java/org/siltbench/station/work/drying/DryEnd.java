package org.siltbench.station.work.drying;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.method.MethodBook;

/**
 * Filters leave the oven for the desiccator.
 *
 * @param cycle the cycle; empty for the only one that runs
 * @param only those that leave; empty for all still inside
 * @param heat what the thermometer said before the door was opened
 * @param out that moment as stated by a person; null for now
 */
public record DryEnd(String cycle, Set<String> only, Heat heat, @Nullable OffsetDateTime out) {

  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

  /** Copies the set. */
  public DryEnd {
    only = Set.copyOf(only);
  }

  /**
   * A load in the desiccator.
   *
   * @param cycle the cycle
   * @param filters what left the oven
   * @param out when
   * @param cooledUntil not to be weighed before
   * @param usefulUntil not to be weighed after
   * @param warnings what to know
   * @param entry the ledger entry
   */
  public record Ended(
      String cycle,
      List<String> filters,
      OffsetDateTime out,
      OffsetDateTime cooledUntil,
      OffsetDateTime usefulUntil,
      List<Words> warnings,
      Entry entry) {}

  /** Records it. */
  public Ended record(Bench bench, MethodBook methods) {
    List<Words> warnings = new ArrayList<>();
    Entry entry =
        bench
            .act(
                register -> {
                  warnings.clear();
                  return List.of(draft(register, bench, methods, warnings));
                })
            .get(0);
    Fields data = Fields.of(entry);
    return new Ended(
        data.text("cycle"),
        data.filters("filters"),
        data.time("out").orElse(entry.at()),
        data.time("cooled_until").orElse(entry.at()),
        data.time("useful_until").orElse(entry.at()),
        warnings,
        entry);
  }

  private Draft draft(
      RegisterView register, Bench bench, MethodBook methods, List<Words> warnings) {
    CycleState running = DryCycles.require(register, cycle);
    Purpose purpose = Purpose.of(running.purpose());
    List<String> leaving = leaving(running);
    List<Heated> heated = new ArrayList<>();
    for (String id : leaving) {
      FilterState state = Filters.require(register, id);
      heated.add(new Heated(state, methods.inForce(register, state.method())));
    }
    Times times = Times.of(heated, purpose);
    OffsetDateTime stated = out;
    OffsetDateTime left = stated != null ? stated : OffsetDateTime.now(bench.clock());
    requireLongEnough(running, times, left);
    Optional<Said> fault = heat.fault(heated, purpose);
    fault.ifPresent(said -> warnings.add(language -> said.part("what", language)));
    if (leaving.size() > Load.MOST) {
      warnings.add(Said.of(DryingSays.MANY, leaving.size()));
    }
    return facts(running, leaving, left, times, fault.isEmpty()).draft("dry.ended");
  }

  private List<String> leaving(CycleState running) {
    if (!running.open()) {
      throw new Problem.Refused(DryingSays.ENDED, running.id());
    }
    for (String id : only) {
      if (!running.inside().contains(id)) {
        throw new Problem.Refused(
            DryingSays.NOT_INSIDE, id, running.id(), String.join(", ", running.inside()));
      }
    }
    return running.inside().stream().filter(id -> only.isEmpty() || only.contains(id)).toList();
  }

  private static void requireLongEnough(CycleState running, Times times, OffsetDateTime left) {
    OffsetDateTime earliest = running.in().plus(times.dry());
    if (left.isBefore(earliest)) {
      long minutes = Duration.between(left, earliest).plusSeconds(59).toMinutes();
      throw new Problem.Refused(
          DryingSays.TOO_EARLY,
          running.id(),
          times.dry().toMinutes(),
          minutes,
          earliest.format(CLOCK));
    }
  }

  private Facts facts(
      CycleState running, List<String> leaving, OffsetDateTime left, Times times, boolean inRange) {
    Facts facts =
        new Facts()
            .put("cycle", running.id())
            .put("filters", leaving)
            .put("out", Facts.time(left))
            .put("cooled_until", Facts.time(left.plus(times.cool())))
            .put("useful_until", Facts.time(left.plus(times.useful())))
            .putIf("temperature_c", heat.celsius())
            .put("in_range", inRange);
    if (!heat.thermometer().isEmpty()) {
      facts.put("thermometer", heat.thermometer());
    }
    return facts.put("observed", out == null);
  }
}
