package org.siltbench.station.life;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;

/**
 * A balance and its checks.
 *
 * @param name its name at the bench
 * @param described what was last recorded of it, if anything
 * @param checks its checks, oldest first
 */
public record BalanceState(String name, Optional<Fields> described, List<Check> checks) {

  /**
   * One check weight on the pan.
   *
   * @param ref the ledger entry
   * @param at when
   * @param phase opening, bracket or closing
   * @param pass whether it met the balance's limit
   * @param fields all that was recorded
   */
  public record Check(EntryRef ref, OffsetDateTime at, String phase, boolean pass, Fields fields) {}

  /** The balance; empty if nothing is known of it. */
  public static Optional<BalanceState> fold(String name, List<Entry> history) {
    Optional<Fields> described = Live.newest(history, "balance.described").map(Fields::of);
    List<Check> checks =
        Live.entries(history)
            .filter(entry -> entry.kind().equals("check.weighed"))
            .map(BalanceState::check)
            .toList();
    return described.isEmpty() && checks.isEmpty()
        ? Optional.empty()
        : Optional.of(new BalanceState(name, described, checks));
  }

  private static Check check(Entry entry) {
    Fields data = Fields.of(entry);
    return new Check(entry.ref(), entry.at(), data.text("phase"), data.flag("pass"), data);
  }

  /** The newest check. */
  public Optional<Check> lastCheck() {
    return checks.isEmpty() ? Optional.empty() : Optional.of(checks.get(checks.size() - 1));
  }
}
