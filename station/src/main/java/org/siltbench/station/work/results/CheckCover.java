package org.siltbench.station.work.results;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.life.BalanceState.InSpite;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;

/** Whether a weighing stands between checks that passed. */
final class CheckCover {

  /** The state of the check around a weighing. */
  enum State {
    PASSED,
    MISSING,
    FAILED
  }

  private final RegisterView register;
  private final ZoneId zone;
  private final Map<String, Optional<BalanceState>> byBalance = new HashMap<>();

  CheckCover(RegisterView register, ZoneId zone) {
    this.register = register;
    this.zone = zone;
  }

  /** The checks of a balance, oldest first. */
  List<Check> of(String balance) {
    return state(balance).map(BalanceState::checks).orElse(List.of());
  }

  private Optional<BalanceState> state(String balance) {
    return byBalance.computeIfAbsent(
        balance, name -> BalanceState.fold(name, register.history(About.balance(name))));
  }

  /**
   * The supervisor's word under which it was weighed in spite of a check: said before it on its
   * day, and no check of the balance between.
   */
  Optional<InSpite> inSpite(Weighed weighed) {
    return state(weighed.balance()).map(BalanceState::overrides).orElse(List.of()).stream()
        .filter(said -> !said.at().isAfter(weighed.at()))
        .filter(said -> day(said.at()).equals(day(weighed.at())))
        .filter(said -> of(weighed.balance()).stream().noneMatch(c -> between(said, c, weighed)))
        .reduce((earlier, later) -> later);
  }

  private static boolean between(InSpite said, Check check, Weighed weighed) {
    return check.at().isAfter(said.at()) && !check.at().isAfter(weighed.at());
  }

  /**
   * A failed check holds back everything since the last passed one: so a weighing needs a passed
   * check before it on its day, and none that failed right before or right after it.
   */
  State around(Weighed weighed) {
    LocalDate day = day(weighed.at());
    State before = State.MISSING;
    for (Check check : of(weighed.balance())) {
      if (!day(check.at()).equals(day)) {
        continue;
      }
      State verdict = check.pass() ? State.PASSED : State.FAILED;
      if (check.at().isAfter(weighed.at())) {
        return verdict == State.FAILED ? State.FAILED : before;
      }
      before = verdict;
    }
    return before;
  }

  private LocalDate day(OffsetDateTime at) {
    return at.atZoneSameInstant(zone).toLocalDate();
  }
}
