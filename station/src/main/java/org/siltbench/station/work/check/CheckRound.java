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
  private int since;
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
    LocalDate today = LocalDate.now(bench.clock());
    CheckState state = CheckState.of(bench.register(), balance, today, bench.clock().getZone());
    if (state.passed()) {
      return Words.none();
    }
    if (state.override().isPresent()) {
      listener.accept(new WeighEvent.Warned(state.inSpite()));
      return Words.none();
    }
    return weight == null ? tell(state.fault()) : check(weight, Phase.OPENING);
  }

  /** One more mass was recorded. */
  public void weighed() {
    since++;
    recorded++;
  }

  /** What stops the work because a bracketing check is due or failed, or empty. */
  public Words bracket() throws InterruptedException {
    if (since < every()) {
      return Words.none();
    }
    if (weight != null) {
      return check(weight, Phase.BRACKET);
    }
    int count = since;
    since = 0;
    return tell(Said.of(CheckSays.BRACKET_DUE, count));
  }

  /** What the closing check says, or empty. */
  public Words closing() throws InterruptedException {
    return weight == null || recorded == 0 ? Words.none() : check(weight, Phase.CLOSING);
  }

  private Words check(CheckWeight with, Phase phase) throws InterruptedException {
    CheckWeighing.Checked checked = weighing.weigh(with, phase);
    since = 0;
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
