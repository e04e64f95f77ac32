package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.BalanceRule;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * Opening, bracketing and closing checks around a run of weighings, under the strictest of the
 * methods concerned. A missing or failed check stops the run or is told, as the methods say.
 */
public final class CheckRound {

  private final Bench bench;
  private final String balance;
  private final @Nullable CheckWeight weight;
  private final List<BalanceRule> rules;
  private final Consumer<WeighEvent> listener;
  private final CheckWeighing weighing;
  private final LocalDate day;
  private int told;
  private int recorded;
  private boolean stopped;

  /**
   * Checks on one balance.
   *
   * @param weight the check weight on the same pan; null to check apart
   * @param rules of the methods of what is to be weighed; empty where nothing is known of it
   */
  public CheckRound(
      Bench bench,
      PanWatch pan,
      String balance,
      @Nullable CheckWeight weight,
      List<BalanceRule> rules,
      Consumer<WeighEvent> listener) {
    this.bench = bench;
    this.balance = balance;
    this.weight = weight;
    this.rules = List.copyOf(rules);
    this.listener = listener;
    this.day = LocalDate.now(bench.clock());
    this.weighing = new CheckWeighing(bench, pan, balance, limit(), listener);
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
  public Words opening() throws InterruptedException {
    CheckState state = CheckState.of(bench.register(), balance, day, bench.clock().getZone());
    if (state.override().isPresent()) {
      listener.accept(new WeighEvent.Warned(state.inSpite()));
      return Words.none();
    }
    if (state.passed()) {
      return Words.none();
    }
    told = state.since();
    return weight == null ? tell(state.fault()) : check(weight, Phase.OPENING);
  }

  /** One more mass was recorded. */
  public void weighed() {
    recorded++;
  }

  /** Weighings since the last passed check, in this run or before it. */
  private int since() {
    return SinceCheck.count(bench.register(), balance, day, bench.clock().getZone());
  }

  /** What stops the work because a bracketing check is due or failed, or empty. */
  public Words bracket() throws InterruptedException {
    int since = since();
    told = Math.min(told, since);
    if (since < told + every()) {
      return Words.none();
    }
    told = stops() ? told : since; // what only warns is said again after as many more
    return weight == null
        ? tell(Said.of(CheckSays.BRACKET_DUE, since))
        : check(weight, Phase.BRACKET);
  }

  /** What the closing check says, or empty. */
  public Words closing() throws InterruptedException {
    return weight == null || recorded == 0 ? Words.none() : check(weight, Phase.CLOSING);
  }

  private Words check(CheckWeight with, Phase phase) throws InterruptedException {
    CheckWeighing.Checked checked = weighing.weigh(with, phase);
    if (checked.check().pass()) {
      return Words.none();
    }
    return tell(
        Said.of(
            CheckSays.CHECK_FAILED,
            phase.code(),
            checked.check().error().toMilligrams(),
            checked.check().limit().toMilligrams()));
  }

  /** True if a check has stopped the work, and not its end or a refusal. */
  public boolean hasStopped() {
    return stopped;
  }

  private Words tell(Words fault) {
    if (stops()) {
      stopped = true;
      return Said.of(CheckSays.STOPPED, fault);
    }
    listener.accept(new WeighEvent.Warned(fault));
    return Words.none();
  }
}
