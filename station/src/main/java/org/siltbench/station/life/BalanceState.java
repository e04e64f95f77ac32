package org.siltbench.station.life;

import java.time.OffsetDateTime;
import java.util.ArrayList;
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
 * @param overrides when a supervisor said to weigh on in spite of a check, oldest first
 */
public record BalanceState(
    String name, Optional<Fields> described, List<Check> checks, List<InSpite> overrides) {

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

  /**
   * A supervisor's word to weigh on in spite of a failed or missing check.
   *
   * @param ref the ledger entry
   * @param at when it was said
   * @param by who said it
   * @param fault what was wrong: failed or missing
   * @param reason why
   * @param after the check before it, if there was one: a later check ends it
   */
  public record InSpite(
      EntryRef ref,
      OffsetDateTime at,
      String by,
      String fault,
      String reason,
      Optional<EntryRef> after) {}

  /** The balance; empty if nothing is known of it. */
  public static Optional<BalanceState> fold(String name, List<Entry> history) {
    Optional<Fields> described = Live.newest(history, "balance.described").map(Fields::of);
    List<Check> checks =
        Live.entries(history)
            .filter(entry -> entry.kind().equals("check.weighed"))
            .map(BalanceState::check)
            .toList();
    List<InSpite> overrides = overrides(history);
    return described.isEmpty() && checks.isEmpty() && overrides.isEmpty()
        ? Optional.empty()
        : Optional.of(new BalanceState(name, described, checks, overrides));
  }

  private static List<InSpite> overrides(List<Entry> history) {
    List<InSpite> out = new ArrayList<>();
    Optional<EntryRef> check = Optional.empty();
    for (Entry entry : Live.entries(history).toList()) {
      if (entry.kind().equals("check.weighed")) {
        check = Optional.of(entry.ref());
      } else if (entry.kind().equals("check.overridden")) {
        Fields data = Fields.of(entry);
        out.add(
            new InSpite(
                entry.ref(),
                entry.at(),
                entry.by(),
                data.text("fault"),
                data.text("reason"),
                check));
      }
    }
    return out;
  }

  private static Check check(Entry entry) {
    Fields data = Fields.of(entry);
    return new Check(entry.ref(), entry.at(), data.text("phase"), data.flag("pass"), data);
  }

  /** The newest check. */
  public Optional<Check> lastCheck() {
    return checks.isEmpty() ? Optional.empty() : Optional.of(checks.get(checks.size() - 1));
  }

  /** The newest override, if no check has ended it. */
  public Optional<InSpite> lastOverride() {
    return overrides.isEmpty()
        ? Optional.empty()
        : Optional.of(overrides.get(overrides.size() - 1))
            .filter(one -> one.after().equals(lastCheck().map(Check::ref)));
  }
}
