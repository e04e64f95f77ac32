package org.siltbench.station.register;

import java.util.Comparator;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;
import org.siltbench.station.ledger.Hlc;

/** The place of an entry in merge order: hybrid clock, then bench, then sequence. */
record Place(Hlc hlc, EntryRef ref) implements Comparable<Place> {

  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::hlc)
          .thenComparing(place -> place.ref().bench())
          .thenComparingLong(place -> place.ref().seq());

  static Place of(Entry entry) {
    return new Place(entry.hlc(), entry.ref());
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }
}
