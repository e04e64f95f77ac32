package org.siltbench.station.work.amend;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.bench.SupposedBench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.work.correct.Correction;
import org.siltbench.station.work.correct.Hold;
import org.siltbench.station.work.correct.Rejection;
import org.siltbench.station.work.correct.Swap;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.results.Impact;
import org.siltbench.station.work.scan.BagScan;

/** One act on the log: what it would change, and the act itself. */
public final class Amend {

  private final Function<Bench, Set<String>> touches;
  private final Function<Bench, List<Entry>> act;

  private Amend(Function<Bench, Set<String>> touches, Function<Bench, List<Entry>> act) {
    this.touches = touches;
    this.act = act;
  }

  /** Fields of an entry are set. */
  public static Amend of(Correction correction, MethodBook methods) {
    return new Amend(
        bench -> {
          Set<String> touched =
              new LinkedHashSet<>(new Impact(bench, methods).about(correction.target()));
          String other = correction.set().getOrDefault("filter", "");
          if (!other.isEmpty()) {
            touched.add(BagScan.of(other).filter().text());
          }
          return touched;
        },
        bench -> List.of(correction.record(bench)));
  }

  /** Two filters are exchanged. */
  public static Amend of(Swap swap) {
    return new Amend(bench -> Set.of(swap.a(), swap.b()), bench -> List.of(swap.record(bench)));
  }

  /** A filter is taken out. */
  public static Amend of(Rejection rejection) {
    return new Amend(
        bench -> Set.of(rejection.filter()), bench -> List.of(rejection.record(bench)));
  }

  /** Results are kept back or set free. */
  public static Amend of(Hold hold) {
    return new Amend(bench -> new LinkedHashSet<>(hold.filters()), hold::record);
  }

  /**
   * What it would change; nothing is written.
   *
   * @throws org.siltbench.station.Problem if its rule refuses it
   */
  public List<Impact.Change> ahead(Bench bench, MethodBook methods) {
    SupposedBench tried = new SupposedBench(bench, new LifeSubjects());
    return new Impact(tried, methods)
        .around(touches.apply(bench), () -> act.apply(tried))
        .changes();
  }

  /** Does it, and says what it changed. */
  public Impact.Outcome record(Bench bench, MethodBook methods) {
    return new Impact(bench, methods).around(touches.apply(bench), () -> act.apply(bench));
  }
}
