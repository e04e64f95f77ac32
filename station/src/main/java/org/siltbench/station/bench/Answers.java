package org.siltbench.station.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.StateRow;
import org.siltbench.station.register.Subject;

/** Brings questions from any thread to the register, one at a time. */
final class Answers implements RegisterView {

  private final Turns turns;
  private final Keeper keeper;

  Answers(Turns turns, Keeper keeper) {
    this.turns = turns;
    this.keeper = keeper;
  }

  @Override
  public List<Entry> history(Subject subject) {
    return turns.call(() -> keeper.ask(register -> register.history(subject)));
  }

  @Override
  public Optional<Entry> entry(EntryRef ref) {
    return turns.call(() -> keeper.ask(register -> register.entry(ref)));
  }

  @Override
  public Optional<Entry> asWritten(EntryRef ref) {
    return turns.call(() -> keeper.ask(register -> register.asWritten(ref)));
  }

  @Override
  public List<Entry> amendmentsOf(EntryRef ref) {
    return turns.call(() -> keeper.ask(register -> register.amendmentsOf(ref)));
  }

  @Override
  public Optional<StateRow> state(Subject subject) {
    return turns.call(() -> keeper.ask(register -> register.state(subject)));
  }

  @Override
  public List<StateRow> list(String type, String parent, String status) {
    return turns.call(() -> keeper.ask(register -> register.list(type, parent, status)));
  }

  @Override
  public Map<String, Integer> counts(String type, String status) {
    return turns.call(() -> keeper.ask(register -> register.counts(type, status)));
  }

  @Override
  public void each(Consumer<Entry> visitor, String... kinds) {
    since(0, visitor, kinds);
  }

  @Override
  public void since(long millis, Consumer<Entry> visitor, String... kinds) {
    turns.call(() -> keeper.visit(millis, visitor, kinds));
  }
}
