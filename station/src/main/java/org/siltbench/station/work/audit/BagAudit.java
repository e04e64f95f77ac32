package org.siltbench.station.work.audit;

import java.util.List;
import java.util.function.Consumer;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.said.Said;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.WeighEvent;

/** Weighs bagged filters again before the trip: is the right filter in the right bag? */
public final class BagAudit {

  private static final int SHARE = 10;

  private final Bench bench;
  private final PanWatch pan;
  private final String balance;
  private final Mass limit;
  private final Consumer<WeighEvent> listener;

  /**
   * An audit on one balance.
   *
   * @param limit most that a mass may differ from the recorded one
   */
  public BagAudit(
      Bench bench, PanWatch pan, String balance, Mass limit, Consumer<WeighEvent> listener) {
    this.bench = bench;
    this.pan = pan;
    this.balance = balance;
    this.limit = limit;
    this.listener = listener;
  }

  /** One bag audited. */
  public record Audited(
      String filter, Measured measured, Mass change, boolean agrees, Entry entry) {}

  /** One bag in ten, at least one, spread over the batch. */
  public static List<String> sample(Bench bench, BatchState batch) {
    List<String> ready =
        Filters.ofBatch(bench.register(), batch.code()).stream()
            .filter(filter -> filter.status() == Status.PRE_WEIGHED)
            .map(FilterState::id)
            .toList();
    int wanted = (ready.size() + SHARE - 1) / SHARE;
    return java.util.stream.IntStream.range(0, wanted)
        .mapToObj(i -> ready.get(Math.min(ready.size() - 1, i * SHARE + SHARE / 2)))
        .distinct()
        .toList();
  }

  /** Weighs one filter out of its bag and records the comparison. */
  public Audited weigh(String id) throws InterruptedException {
    FilterState filter = Filters.require(bench.register(), id);
    Life.require(id, filter.status(), Act.AUDIT, filter.role());
    Weighed before = filter.preMass().orElseThrow(() -> new Problem.Refused(AuditSays.NO_MASS, id));
    PanOutcome outcome = pan.weigh(new PanLoad.OfFilter(id, Said.of(AuditSays.OUT_OF_BAG)));
    if (outcome instanceof PanOutcome.NotTaken no) {
      listener.accept(new WeighEvent.Declined(id, no.words(), null));
      throw new Problem.Refused(AuditSays.NOT_WEIGHED, id, no.words());
    }
    Measured seen = Measured.observed((PanOutcome.Stable) outcome, balance, pan.formatName());
    Mass change = seen.mass().minus(before.mass());
    boolean agrees = change.abs().compareTo(limit) <= 0;
    Entry entry = record(id, seen, change, agrees);
    listener.accept(new WeighEvent.Recorded(entry, seen));
    return new Audited(id, seen, change, agrees, entry);
  }

  private Entry record(String id, Measured seen, Mass change, boolean agrees) {
    return bench
        .act(
            register -> {
              FilterState filter = Filters.require(register, id);
              Life.require(id, filter.status(), Act.AUDIT, filter.role());
              Facts facts =
                  new Facts()
                      .put("filter", id)
                      .put("status", "pre")
                      .put("round", filter.pre().size())
                      .put("purpose", "audit")
                      .put("change_mg", change.toMilligrams())
                      .put("limit_mg", limit.toMilligrams())
                      .put("agrees", agrees);
              seen.putInto(facts.fields());
              return List.of(facts.draft("weighing"));
            })
        .get(0);
  }
}
