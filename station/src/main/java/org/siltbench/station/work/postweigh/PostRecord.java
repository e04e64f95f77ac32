package org.siltbench.station.work.postweigh;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.siltbench.calc.constant.ConstantSays;
import org.siltbench.calc.constant.ConstantVerdict;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.VerdictRule;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.correct.Reasons;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.scan.BagScan;
import org.siltbench.station.work.weigh.Measured;

/** Records masses of loaded filters, if the rules of the job let them in. */
final class PostRecord {

  private final Bench bench;
  private final MethodBook methods;
  private final PostWeighSettings settings;
  private final Map<String, String> accepted = new ConcurrentHashMap<>();
  private volatile String surprise = "";

  PostRecord(Bench bench, MethodBook methods, PostWeighSettings settings) {
    this.bench = bench;
    this.methods = methods;
    this.settings = settings;
    settings.accept().forEach(id -> accepted.put(id, settings.reason()));
  }

  /** From now on a surprising mass of this filter is recorded all the same, and why. */
  void accept(String id, String reason) {
    accepted.put(id, Reasons.check(reason));
  }

  /** The filter whose mass was refused because it surprises; empty for none. */
  String surprise() {
    return surprise;
  }

  /** Judges a scan before anything is put on the pan. */
  Expected admit(BagScan bag) {
    return Expected.of(
        bench.register(), methods, bag, settings.expected(), settings.repeat(), now());
  }

  /** The dishes that wait now. */
  DueDishes dishes() {
    return DueDishes.of(bench.register(), settings.expected());
  }

  /** True if the filter has been dried and not weighed since. */
  boolean isDue(String id) {
    return Filters.find(bench.register(), id)
        .map(state -> state.status() == Status.DRYING)
        .orElse(false);
  }

  private OffsetDateTime now() {
    OffsetDateTime stated = settings.at();
    return stated != null ? stated : OffsetDateTime.now(bench.clock());
  }

  /** Asks the rules once more and writes. */
  PostWeighReport.Done record(BagScan bag, Measured seen) {
    List<Judged> judged = new ArrayList<>();
    Entry written =
        bench
            .act(
                register -> {
                  Expected expected =
                      Expected.of(
                          register, methods, bag, settings.expected(), settings.repeat(), now());
                  requireFit(expected, seen);
                  Judged now = judge(expected, seen);
                  judged.add(now);
                  return List.of(draft(expected, seen, now.verdict()));
                })
            .get(0);
    Judged last = judged.get(judged.size() - 1);
    return new PostWeighReport.Done(
        bag.filter().text(), seen, last.verdict(), last.decision(), written);
  }

  private record Judged(ConstantVerdict verdict, boolean decision) {}

  private Judged judge(Expected expected, Measured seen) {
    ConstantVerdict verdict = verdict(expected, seen);
    return new Judged(
        verdict, expected.method().constancy().needsDecision(verdict, expected.round()));
  }

  private ConstantVerdict verdict(Expected expected, Measured seen) {
    if (settings.repeat()) {
      return new ConstantVerdict(
          ConstantVerdict.Kind.NOT_TESTED, null, null, ConstantSays.REPEAT.with());
    }
    return expected.verdictWith(seen.mass(), resolution(seen));
  }

  private static Mass resolution(Measured seen) {
    String step = seen.resolutionGrams();
    if (step != null) {
      return Mass.ofGrams(step);
    }
    int point = seen.grams().indexOf('.');
    int places = point < 0 ? 0 : seen.grams().length() - point - 1;
    return new Mass(Math.round(Math.pow(10, 9 - places)));
  }

  private void requireFit(Expected expected, Measured seen) {
    String id = expected.state().id();
    requireDryEnough(expected, seen);
    Mass residue = expected.residue(seen.mass());
    Mass stop = expected.method().residue().stopBelow();
    if (isTooLight(expected, seen) && !accepted.containsKey(id)) {
      surprise = id;
      throw new Problem.Refused(
          PostWeighSays.TOO_LIGHT, id, residue.abs().toMilligrams(), stop.abs().toMilligrams());
    }
  }

  private static boolean isTooLight(Expected expected, Measured seen) {
    return expected.residue(seen.mass()).compareTo(expected.method().residue().stopBelow()) < 0;
  }

  private static void requireDryEnough(Expected expected, Measured seen) {
    var stable = seen.stable();
    double allowed = expected.method().balance().moistureAllowance().milligrams();
    if (stable != null && stable.moistureMg() > allowed) {
      throw new Problem.Refused(
          PostWeighSays.MOISTURE,
          expected.state().id(),
          org.siltbench.station.work.weigh.Grams.decimal(stable.moistureMg()),
          expected.method().balance().moistureAllowance().toMilligrams());
    }
  }

  private Draft draft(Expected expected, Measured seen, ConstantVerdict verdict) {
    Facts facts =
        new Facts()
            .put("filter", expected.state().id())
            .put("status", "post")
            .put("round", expected.round())
            .put("purpose", settings.repeat() ? "repeat" : "result")
            .put("cycle", expected.stay().cycle());
    if (!expected.stay().dish().isEmpty()) {
      facts.put("dish", expected.stay().dish());
    }
    seen.putInto(facts.fields());
    if (isTooLight(expected, seen)) {
      facts.put("override", true);
      facts.put("reason", accepted.getOrDefault(expected.state().id(), ""));
    }
    if (!settings.repeat()) {
      facts.put("verdict", verdict.kind().word());
      facts.put("rule", VerdictRule.data(expected.method().constancy()));
    }
    Mass change = verdict.change();
    if (change != null) {
      facts.put("change_g", change.toGrams());
    }
    return facts.draft("weighing");
  }
}
