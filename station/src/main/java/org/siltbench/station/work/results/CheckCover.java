package org.siltbench.station.work.results;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.BalanceState.Check;
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
  private final Map<String, List<Check>> byBalance = new HashMap<>();

  CheckCover(RegisterView register, ZoneId zone) {
    this.register = register;
    this.zone = zone;
  }

  /** The checks of a balance, oldest first. */
  List<Check> of(String balance) {
    return byBalance.computeIfAbsent(
        balance,
        name ->
            BalanceState.fold(name, register.history(About.balance(name)))
                .map(BalanceState::checks)
                .orElse(List.of()));
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
