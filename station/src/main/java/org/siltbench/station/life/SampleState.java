package org.siltbench.station.life;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.siltbench.station.ledger.Entry;

/**
 * One sample, over one or several filters.
 *
 * @param number the sample number
 * @param records its field notes, in the order its filters were used
 */
public record SampleState(String number, List<SampleRecord> records) {

  /** The sample; empty if no notes name it. */
  public static Optional<SampleState> fold(String number, List<Entry> history) {
    List<SampleRecord> records =
        Live.entries(history)
            .filter(entry -> entry.kind().equals("sample.received"))
            .map(SampleRecord::of)
            .sorted(
                Comparator.comparingInt(SampleRecord::order).thenComparing(SampleRecord::filter))
            .toList();
    return records.isEmpty() ? Optional.empty() : Optional.of(new SampleState(number, records));
  }
}
