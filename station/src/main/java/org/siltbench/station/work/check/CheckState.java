package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
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
 * @param override a supervisor's word to weigh on all the same, while it holds: until the next
 *     check of this balance, and to the end of that day at the longest
 */
public record CheckState(Optional<Check> last, Optional<BalanceState.InSpite> override) {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm");

  /** The state of a balance on a day. */
  public static CheckState of(RegisterView register, String balance, LocalDate day, ZoneId zone) {
    Optional<BalanceState> state =
        BalanceState.fold(balance, register.history(About.balance(balance)));
    return new CheckState(
        state.flatMap(BalanceState::lastCheck).filter(c -> on(c.at(), day, zone)),
        state.flatMap(BalanceState::lastOverride).filter(o -> on(o.at(), day, zone)));
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

  /** What is wrong, as a stable word: failed or missing; empty if it passed. */
  String faultCode() {
    if (passed()) {
      return "";
    }
    return last.isEmpty() ? "missing" : "failed";
  }

  /** Who said when and why to weigh on all the same, in words; empty while nobody has. */
  public Words inSpite() {
    return override
        .<Words>map(
            said ->
                Said.of(
                    CheckSays.WEIGH_ON,
                    fault(),
                    said.by(),
                    said.at().format(MINUTE),
                    said.reason()))
        .orElse(Words.none());
  }
}
