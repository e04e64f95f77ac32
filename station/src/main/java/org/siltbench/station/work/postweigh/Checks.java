package org.siltbench.station.work.postweigh;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.siltbench.calc.method.BalanceRule;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.work.check.CheckState;
import org.siltbench.station.work.check.CheckWeighing;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.check.Phase;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.WeighEvent;

/** Opening, bracketing and closing checks, under the strictest method of what is to be weighed. */
final class Checks {

  private final Bench bench;
  private final PostWeighSettings settings;
  private final Consumer<WeighEvent> listener;
  private final List<BalanceRule> rules;
  private final CheckWeighing weighing;
  private int since;
  private int recorded;

  Checks(
      Bench bench,
      MethodBook methods,
      PanWatch pan,
      PostWeighSettings settings,
      Consumer<WeighEvent> listener) {
    this.bench = bench;
    this.settings = settings;
    this.listener = listener;
    this.rules = rules(bench, methods, settings);
    this.weighing = new CheckWeighing(bench, pan, settings.balance(), limit(), listener);
  }

  private static List<BalanceRule> rules(
      Bench bench, MethodBook methods, PostWeighSettings settings) {
    Stream<String> waiting =
        bench.register().list(About.FILTER, "", Status.DRYING.code()).stream()
            .map(row -> row.subject().id());
    Stream<String> ids = settings.expected().map(Set::stream).orElse(waiting);
    Set<String> keys = new LinkedHashSet<>();
    ids.flatMap(id -> Filters.find(bench.register(), id).stream())
        .map(FilterState::method)
        .forEach(keys::add);
    return keys.stream()
        .map(key -> methods.inForce(bench.register(), key))
        .map(Method::balance)
        .toList();
  }

  private Mass limit() {
    return rules.stream()
        .map(BalanceRule::checkLimit)
        .min(Mass::compareTo)
        .orElse(Mass.ofMilligrams("0.5"));
  }

  private int every() {
    return rules.stream().mapToInt(BalanceRule::checkEvery).min().orElse(20);
  }

  private boolean stops() {
    return rules.stream().anyMatch(r -> r.missingCheck() == BalanceRule.MissingCheck.STOP);
  }

  /** What stops the work before it begins, or empty. */
  String opening() throws InterruptedException {
    LocalDate today = LocalDate.now(bench.clock());
    CheckState state =
        CheckState.of(bench.register(), settings.balance(), today, bench.clock().getZone());
    if (state.passed()) {
      return "";
    }
    CheckWeight weight = settings.weight();
    return weight == null ? tell(state.fault()) : check(weight, Phase.OPENING);
  }

  void weighed() {
    since++;
    recorded++;
  }

  /** What stops the work because a bracketing check is due or failed, or empty. */
  String bracket() throws InterruptedException {
    if (since < every()) {
      return "";
    }
    CheckWeight weight = settings.weight();
    if (weight != null) {
      return check(weight, Phase.BRACKET);
    }
    int count = since;
    since = 0;
    return tell(count + " weighings since the last check: a bracketing check is due.");
  }

  /** What the closing check says, or empty. */
  String closing() throws InterruptedException {
    CheckWeight weight = settings.weight();
    return weight == null || recorded == 0 ? "" : check(weight, Phase.CLOSING);
  }

  private String check(CheckWeight weight, Phase phase) throws InterruptedException {
    CheckWeighing.Checked checked = weighing.weigh(weight, phase);
    since = 0;
    if (checked.check().pass()) {
      return "";
    }
    return tell(
        "The "
            + phase.code()
            + " check failed: the balance is off by "
            + checked.check().error().toMilligrams()
            + " mg, the limit is "
            + checked.check().limit().toMilligrams()
            + " mg. Everything since the last passed check is held back.");
  }

  private String tell(String fault) {
    if (stops()) {
      return fault;
    }
    listener.accept(new WeighEvent.Warned(fault));
    return "";
  }
}
