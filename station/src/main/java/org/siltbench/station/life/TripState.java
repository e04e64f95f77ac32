package org.siltbench.station.life;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.siltbench.station.ledger.Entry;

/**
 * One trip to the field.
 *
 * @param name what people call it
 * @param batches the batches issued to it
 * @param out filters issued, less those returned unused
 * @param missing filters noted as not returned
 * @param custody transfers, oldest first
 */
public record TripState(
    String name, Set<String> batches, Set<String> out, Set<String> missing, List<Fields> custody) {

  /** The trip; empty if nothing was issued to it. */
  public static Optional<TripState> fold(String name, List<Entry> history) {
    Set<String> batches = new LinkedHashSet<>();
    Set<String> out = new LinkedHashSet<>();
    Set<String> missing = new LinkedHashSet<>();
    Live.entries(history).forEach(entry -> take(entry, batches, out, missing));
    List<Fields> custody = Live.of(history, "custody").toList();
    return batches.isEmpty() && custody.isEmpty()
        ? Optional.empty()
        : Optional.of(new TripState(name, batches, out, missing, custody));
  }

  private static void take(Entry entry, Set<String> batches, Set<String> out, Set<String> missing) {
    Fields data = Fields.of(entry);
    switch (entry.kind()) {
      case "batch.issued" -> {
        batches.add(data.text("batch"));
        out.addAll(data.filters("filters"));
      }
      case "batch.returned" -> data.filters("filters").forEach(out::remove);
      case "bag.missing" -> missing.add(data.text("filter"));
      default -> {
        // custody is listed as it is
      }
    }
  }
}
