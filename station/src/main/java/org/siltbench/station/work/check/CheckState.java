package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.OptionalInt;
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
 * @param since weighings since the last passed check of that day, or since that word
 * @param bracketDue whether so many call for a bracketing check under the strictest of the lab's
 *     methods that stop for one
 */
public record CheckState(
    Optional<Check> last, Optional<BalanceState.InSpite> override, int since, boolean bracketDue) {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("HH:mm");

  /** The state of a balance on a day. */
  public static CheckState of(RegisterView register, String balance, LocalDate day, ZoneId zone) {
    Optional<BalanceState> state =
        BalanceState.fold(balance, register.history(About.balance(balance)));
    int since = SinceCheck.count(register, balance, day, zone);
    OptionalInt every = SinceCheck.strictest(register);
    return new CheckState(
        state.flatMap(BalanceState::lastCheck).filter(c -> on(c.at(), day, zone)),
        state.flatMap(BalanceState::lastOverride).filter(o -> on(o.at(), day, zone)),
        since,
        every.isPresent() && since >= every.getAsInt());
  }

  private static boolean on(OffsetDateTime at, LocalDate day, ZoneId zone) {
    return at.atZoneSameInstant(zone).toLocalDate().equals(day);
  }

  /** True if the newest check of the day passed. */
  public boolean passed() {
    return last.map(Check::pass).orElse(false);
  }

  /** True if the newest check of the day passed and no other is due. */
  public boolean clear() {
    return passed() && !bracketDue;
  }

  /** True if a supervisor's word holds and nothing has come up since that it does not cover. */
  public boolean covered() {
    return override.isPresent() && !bracketDue;
  }

  /** What is wrong, in words; empty if it passed and no other check is due. */
  public Words fault() {
    if (bracketDue && (passed() || override.isPresent())) {
      return Said.of(CheckSays.BRACKET_DUE, since);
    }
    if (passed()) {
      return Words.none();
    }
    return Said.of(last.isEmpty() ? CheckSays.NOT_CHECKED : CheckSays.LAST_FAILED);
  }

  /** What is wrong, as a stable word: failed or missing; empty if nothing is. */
  String faultCode() {
    if (clear()) {
      return "";
    }
    return last.filter(check -> !check.pass()).isPresent() ? "failed" : "missing";
  }

  private Words overridden() {
    return passed() ? Said.of(CheckSays.BRACKET_OVER) : fault();
  }

  /** Who said when and why to weigh on all the same, in words; empty while nobody has. */
  public Words inSpite() {
    return override
        .<Words>map(
            said ->
                Said.of(
                    CheckSays.WEIGH_ON,
                    overridden(),
                    said.by(),
                    said.at().format(MINUTE),
                    said.reason()))
        .orElse(Words.none());
  }
}
