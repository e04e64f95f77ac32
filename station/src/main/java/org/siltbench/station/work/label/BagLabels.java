package org.siltbench.station.work.label;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.calc.id.BagCode;
import org.siltbench.calc.id.FilterId;
import org.siltbench.calc.method.Method;
import org.siltbench.labels.label.BagLabel;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.preweigh.PrePlan;

/** Makes the labels of filters from their constant pre-masses, and records what was printed. */
public final class BagLabels {

  private final Bench bench;
  private final BatchState batch;
  private final Method method;

  public BagLabels(Bench bench, BatchState batch, Method method) {
    this.bench = bench;
    this.batch = batch;
    this.method = method;
  }

  /** A label ready to print. */
  public record Ready(
      FilterState filter, BagLabel label, String grams, String constancy, boolean reprint) {}

  /**
   * The labels of the batch.
   *
   * @param all true for every filter with a mass, false for those that never had a label or whose
   *     mass has changed since
   */
  public List<Ready> due(boolean all) {
    List<Ready> out = new ArrayList<>();
    for (FilterState filter : Filters.ofBatch(bench.register(), batch.code())) {
      boolean ready = PrePlan.isUsable(filter, method) && allowed(filter);
      if (ready && (all || revision(filter) > filter.labelRevision())) {
        out.add(of(filter));
      }
    }
    return out;
  }

  private static boolean allowed(FilterState filter) {
    return Life.outcome(filter.status(), Act.LABEL, filter.role())
        instanceof org.siltbench.station.life.Outcome.Goes;
  }

  /**
   * The label of one filter.
   *
   * @throws Problem.Refused if it has no constant mass yet
   */
  public Ready of(String id) {
    FilterState filter = Filters.require(bench.register(), id);
    Life.require(id, filter.status(), Act.LABEL, filter.role());
    if (!PrePlan.isUsable(filter, method)) {
      throw new Problem.Refused(LabelSays.NOT_CONSTANT, id);
    }
    return of(filter);
  }

  private Ready of(FilterState filter) {
    Weighed mass = filter.preMass().orElseThrow();
    int revision = Math.min(revision(filter), BagCode.MAX_REVISION);
    String code = code(filter, mass, revision);
    BagLabel label =
        new BagLabel(
            code,
            filter.id(),
            mass.digits() + " g",
            revision,
            filter.role().code(),
            filter.duplicate(),
            batch.name(),
            bench.practice());
    return new Ready(
        filter,
        label,
        mass.digits(),
        PrePlan.constancy(filter, method).word(),
        filter.labelRevision() >= revision);
  }

  private static String code(FilterState filter, Weighed mass, int revision) {
    try {
      return new BagCode(new FilterId(filter.id()), mass.digits(), revision).text();
    } catch (IllegalArgumentException e) {
      throw new Problem.Refused(LabelSays.NO_CODE, filter.id(), Elsewhere.words(e));
    }
  }

  /** One more than the last label's where the mass has changed since; 1 for the first. */
  private static int revision(FilterState filter) {
    if (filter.labelRevision() == 0) {
      return 1;
    }
    boolean same = filter.labelMass().equals(filter.preMass().map(Weighed::mass));
    return same ? filter.labelRevision() : filter.labelRevision() + 1;
  }

  /**
   * Records labels that were printed.
   *
   * @param media the stock
   * @param to the file or the queue
   * @param copies labels of each filter
   */
  public List<Entry> record(List<Ready> printed, String media, String to, int copies) {
    return bench.act(
        register -> printed.stream().map(one -> draft(register, one, media, to, copies)).toList());
  }

  private static Draft draft(
      RegisterView register, Ready one, String media, String to, int copies) {
    FilterState now = Filters.require(register, one.filter().id());
    return new Facts()
        .put("filter", now.id())
        .put("revision", one.label().revision())
        .put("mass_g", one.grams())
        .put("media", media)
        .put("to", to)
        .put("copies", copies)
        .put("constancy", one.constancy())
        .put("why", now.labelRevision() >= one.label().revision() ? "reprint" : "first")
        .draft("label.printed");
  }
}
