package org.siltbench.station.life;

import java.util.List;
import java.util.Optional;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.ledger.EntryRef;

/**
 * All that is known of one filter, folded from its history.
 *
 * @param id its ID
 * @param batch the batch it was prepared in
 * @param lot the maker's lot
 * @param method the method's key
 * @param plannedRole what it was prepared for
 * @param duplicate planned as the second of a pair
 * @param role what it is for now
 * @param status where it is in its life
 * @param weighings every recorded mass, oldest first
 * @param labelRevision the newest label's revision; 0 if none was printed
 * @param labelMass the mass on that label
 * @param bagClosed whether its bag was scanned closed
 * @param trip the trip it was issued to, or empty
 * @param missing noted as not returned
 * @param records its field notes; more than one is a conflict to be settled
 * @param stays its drying cycles, oldest first
 * @param holds open reasons to keep its result back
 * @param report the report its result was released in, or empty
 * @param rejected why it was taken out, or empty
 * @param oddities entries that do not follow from those before them, in words
 */
public record FilterState(
    String id,
    String batch,
    String lot,
    String method,
    Role plannedRole,
    boolean duplicate,
    Role role,
    Status status,
    List<Weighed> weighings,
    int labelRevision,
    Optional<Mass> labelMass,
    boolean bagClosed,
    String trip,
    boolean missing,
    List<SampleRecord> records,
    List<Stay> stays,
    List<String> holds,
    String report,
    String rejected,
    List<Oddity> oddities) {

  /**
   * An entry that does not follow from those before it: kept, shown, never guessed at.
   *
   * @param ref the entry
   * @param act what it records
   * @param why what speaks against it
   */
  public record Oddity(EntryRef ref, Act act, String why) {}

  /** Copies the lists. */
  public FilterState {
    weighings = List.copyOf(weighings);
    records = List.copyOf(records);
    stays = List.copyOf(stays);
    holds = List.copyOf(holds);
    oddities = List.copyOf(oddities);
  }

  /** The pre-weighings that count, oldest first. */
  public List<Weighed> pre() {
    return weighings.stream().filter(w -> !w.post() && w.forResult()).toList();
  }

  /** The post-weighings that count, oldest first, ignition left out. */
  public List<Weighed> post() {
    return weighings.stream()
        .filter(w -> w.post() && w.forResult() && !isIgnition(w.cycle()))
        .toList();
  }

  /** The weighings after ignition, oldest first. */
  public List<Weighed> ignited() {
    return weighings.stream()
        .filter(w -> w.post() && w.forResult() && isIgnition(w.cycle()))
        .toList();
  }

  boolean isIgnition(Weighed weighed) {
    return isIgnition(weighed.cycle());
  }

  private boolean isIgnition(String cycle) {
    return stays.stream().anyMatch(s -> s.cycle().equals(cycle) && s.purpose().equals("ignition"));
  }

  /** The newest pre-weigh mass: the one that labels carry. */
  public Optional<Weighed> preMass() {
    return last(pre());
  }

  /** The newest post-weigh mass. */
  public Optional<Weighed> postMass() {
    return last(post());
  }

  private static Optional<Weighed> last(List<Weighed> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
  }

  /** The newest drying cycle of the loaded filter. */
  public Optional<Stay> lastStay() {
    return lastStay(false);
  }

  /** The newest drying cycle of the clean filter. */
  public Optional<Stay> lastPreStay() {
    return lastStay(true);
  }

  private Optional<Stay> lastStay(boolean clean) {
    return stays.stream().filter(stay -> stay.pre() == clean).reduce((older, newer) -> newer);
  }

  /** The cycle it is in the oven with, if any. */
  public Optional<Stay> openStay() {
    return stays.stream().filter(Stay::open).findFirst();
  }

  /** The field notes in force: the oldest, as a later one is a conflict. */
  public Optional<SampleRecord> record() {
    return records.stream().findFirst();
  }

  /** Drying cycles after which more than one bench weighed this filter. */
  public List<String> weighedTwice() {
    return post().stream()
        .filter(w -> otherBench(w))
        .map(Weighed::cycle)
        .distinct()
        .sorted()
        .toList();
  }

  private boolean otherBench(Weighed one) {
    return post().stream()
        .anyMatch(w -> w.cycle().equals(one.cycle()) && !w.ref().bench().equals(one.ref().bench()));
  }
}
