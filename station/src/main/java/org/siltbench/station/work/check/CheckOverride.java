package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.util.List;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.correct.Reasons;

/**
 * A supervisor's word to weigh on in spite of a failed or missing check. It holds for one balance,
 * until its next check falls due or is made, and to the end of the day at the longest; it is no
 * pass: every mass weighed under it carries it, and a release asks.
 *
 * @param balance the balance's name
 * @param reason why
 */
public record CheckOverride(String balance, String reason) {

  /** Refuses a reason that says nothing. */
  public CheckOverride {
    reason = Reasons.check(reason);
  }

  /** Writes it, if there is something to override; it is said before the weighing, never after. */
  public Entry record(Bench bench) {
    return bench.act(register -> List.of(draft(bench, register))).get(0);
  }

  private Draft draft(Bench bench, RegisterView register) {
    LocalDate today = LocalDate.now(bench.clock());
    CheckState state = CheckState.of(register, balance, today, bench.clock().getZone());
    if (state.clear()) {
      throw new Problem.Refused(CheckSays.HAS_PASSED, balance);
    }
    if (state.covered()) {
      String by = state.override().map(BalanceState.InSpite::by).orElse("");
      throw new Problem.Refused(CheckSays.SAID_ALREADY, balance, by);
    }
    Facts facts =
        new Facts().put("balance", balance).put("fault", state.faultCode()).put("reason", reason);
    state
        .last()
        .filter(check -> !check.pass())
        .ifPresent(failed -> facts.put("check", failed.ref().toString()));
    return facts.draft("check.overridden");
  }
}
