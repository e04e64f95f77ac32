package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/**
 * Whether a balance has been checked on a day.
 *
 * @param last the newest check of that day, if any
 */
public record CheckState(Optional<Check> last) {

  /** The state of a balance on a day. */
  public static CheckState of(RegisterView register, String balance, LocalDate day, ZoneId zone) {
    List<Check> checks =
        BalanceState.fold(balance, register.history(About.balance(balance)))
            .map(BalanceState::checks)
            .orElse(List.of());
    return new CheckState(
        checks.isEmpty()
            ? Optional.empty()
            : Optional.of(checks.get(checks.size() - 1)).filter(c -> on(c.at(), day, zone)));
  }

  private static boolean on(OffsetDateTime at, LocalDate day, ZoneId zone) {
    return at.atZoneSameInstant(zone).toLocalDate().equals(day);
  }

  /** True if the newest check of the day passed. */
  public boolean passed() {
    return last.map(Check::pass).orElse(false);
  }

  /** What is wrong, in words; empty if it passed. */
  public Words fault() {
    if (passed()) {
      return Words.none();
    }
    return Said.of(last.isEmpty() ? CheckSays.NOT_CHECKED : CheckSays.LAST_FAILED);
  }
}
