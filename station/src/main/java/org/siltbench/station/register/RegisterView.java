package org.siltbench.station.register;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;

/**
 * Questions to the register. Entries come back effective: with corrections applied. Order is always
 * merge order (hybrid clock, then bench, then sequence).
 */
public interface RegisterView {

  /** All entries about a subject, oldest first; empty if it is unknown. */
  List<Entry> history(Subject subject);

  /** One effective entry. */
  Optional<Entry> entry(EntryRef ref);

  /** One entry as it was written, before any correction. */
  Optional<Entry> asWritten(EntryRef ref);

  /** The entries that amended the given one, oldest first. */
  List<Entry> amendmentsOf(EntryRef ref);

  /** The folded row of one subject. */
  Optional<StateRow> state(Subject subject);

  /** Folded rows of a type, ordered by id; parent and status may be empty for any. */
  List<StateRow> list(String type, String parent, String status);

  /** How many subjects of a type have a status, by the id of what they belong to, in its order. */
  Map<String, Integer> counts(String type, String status);

  /** Streams all effective entries of the given kinds in order; all kinds if none are named. */
  void each(Consumer<Entry> visitor, String... kinds);

  /** The same from a moment of the hybrid clock on, which counts in milliseconds since 1970. */
  void since(long millis, Consumer<Entry> visitor, String... kinds);
}
