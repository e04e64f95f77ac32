package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.duplicates.DuplicatePair;
import org.siltbench.calc.duplicates.DuplicateRule;
import org.siltbench.calc.flag.Flag;
import org.siltbench.calc.method.Method;

/** Gathers the members of pairs and compares them. */
final class PairBook {

  private static final class Pair {
    private final String kind;
    private final List<SampleSums> members = new ArrayList<>(2);

    Pair(String kind) {
      this.kind = kind;
    }
  }

  private final Method method;
  private final Map<String, Pair> pairs = new LinkedHashMap<>();
  private final Map<String, PairVerdict> verdicts = new LinkedHashMap<>();

  PairBook(Method method) {
    this.method = method;
  }

  /** Adds a member; the filters of one sample are one member. */
  void add(InputRow row, SampleSums sums) {
    Pair pair = pairs.computeIfAbsent(row.pair(), name -> new Pair(row.pairKind()));
    boolean known = pair.members.stream().anyMatch(member -> member == sums);
    if (!known && pair.members.size() <= 2) {
      pair.members.add(sums);
    }
  }

  void compare(Propagator propagator) {
    pairs.forEach((name, pair) -> verdicts.put(name, verdict(name, pair, propagator)));
    pairs.clear();
  }

  private PairVerdict verdict(String name, Pair pair, Propagator propagator) {
    double first = value(pair, 0, propagator);
    double second = value(pair, 1, propagator);
    Flag trouble = trouble(pair, first, second);
    DuplicateRule rule = trouble == null ? rule(pair) : null;
    DuplicateRule.Verdict verdict =
        rule == null ? null : rule.judge(new DuplicatePair(first, second));
    Flag flag = verdict != null && !verdict.agrees() ? Flag.DUPLICATE_APART : trouble;
    return new PairVerdict(name, pair.kind, first, second, verdict, flag);
  }

  private static double value(Pair pair, int member, Propagator propagator) {
    if (pair.members.size() <= member || Double.isNaN(pair.members.get(member).litres())) {
      return Double.NaN;
    }
    return propagator.concentration(pair.members.get(member)).mgPerL();
  }

  private static @Nullable Flag trouble(Pair pair, double first, double second) {
    if (pair.members.size() > 2) {
      return Flag.PAIR_CROWDED;
    }
    if (Double.isNaN(first) || Double.isNaN(second)) {
      return Flag.PAIR_INCOMPLETE;
    }
    boolean mixed =
        pair.members.get(0).taken() != pair.members.get(1).taken()
            || pair.members.stream().anyMatch(SampleSums::isTakenMixed);
    return mixed ? Flag.PAIR_MIXED : null;
  }

  /** The rule at the larger of the two reporting limits. */
  private @Nullable DuplicateRule rule(Pair pair) {
    double limit = 0;
    for (SampleSums member : pair.members) {
      limit = Math.max(limit, method.report().limit(member.litres()));
    }
    return method.duplicates().rule(limit);
  }

  /** What a pair is flagged with; null where all is well or the name is unknown. */
  @Nullable Flag flag(String pair) {
    PairVerdict verdict = verdicts.get(pair);
    return verdict == null ? null : verdict.flag();
  }

  List<PairVerdict> verdicts() {
    return List.copyOf(verdicts.values());
  }
}
