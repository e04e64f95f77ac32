package org.siltbench.station.life;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.siltbench.station.ledger.Entry;

/** Entries that still stand: a correction can set {@code void} to take one back. */
final class Live {

  private Live() {}

  static Stream<Entry> entries(List<Entry> history) {
    return history.stream().filter(entry -> !Fields.of(entry).flag("void"));
  }

  static Stream<Fields> of(List<Entry> history, String kind) {
    return entries(history).filter(entry -> entry.kind().equals(kind)).map(Fields::of);
  }

  static Optional<Entry> newest(List<Entry> history, String kind) {
    return entries(history).filter(entry -> entry.kind().equals(kind)).reduce((a, b) -> b);
  }
}
