package org.siltbench.station.life;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.siltbench.station.ledger.Entry;

/**
 * A drying cycle, folded from its history.
 *
 * @param id its name
 * @param purpose pre, post or ignition
 * @param dishes filter to dish, in the order they went in; the dish may be empty
 * @param inside those still in the oven
 * @param in when the oven was back in range with the last of them
 * @param out when the last of them came out; empty while some are inside
 * @param cooledUntil not to be weighed before
 * @param usefulUntil not to be weighed after
 * @param temperatureIn what the thermometer said at the start, °C, or empty
 * @param temperatureOut what it said at the end, °C, or empty
 * @param thermometer which thermometer, or empty
 */
public record CycleState(
    String id,
    String purpose,
    Map<String, String> dishes,
    Set<String> inside,
    OffsetDateTime in,
    Optional<OffsetDateTime> out,
    Optional<OffsetDateTime> cooledUntil,
    Optional<OffsetDateTime> usefulUntil,
    String temperatureIn,
    String temperatureOut,
    String thermometer) {

  /** The cycle; empty if it was never started. */
  public static Optional<CycleState> fold(String id, List<Entry> history) {
    return Live.newest(history, "dry.started").map(last -> of(id, last, history));
  }

  private static CycleState of(String id, Entry lastStart, List<Entry> history) {
    Fields start = Fields.of(lastStart);
    Map<String, String> dishes = dishes(history);
    Set<String> inside = new LinkedHashSet<>(dishes.keySet());
    Live.of(history, "dry.ended").forEach(end -> end.filters("filters").forEach(inside::remove));
    Optional<Entry> ended = inside.isEmpty() ? Live.newest(history, "dry.ended") : Optional.empty();
    Fields end = ended.map(Fields::of).orElse(Fields.of(Map.of()));
    return new CycleState(
        id,
        start.find("purpose").orElse("post"),
        dishes,
        inside,
        start.time("in").orElse(lastStart.at()),
        ended.map(entry -> end.time("out").orElse(entry.at())),
        end.time("cooled_until"),
        end.time("useful_until"),
        start.text("temperature_c"),
        end.text("temperature_c"),
        start.text("thermometer"));
  }

  private static Map<String, String> dishes(List<Entry> history) {
    Map<String, String> out = new LinkedHashMap<>();
    Live.of(history, "dry.started")
        .flatMap(start -> start.rows("filters").stream())
        .forEach(row -> out.put(row.text("filter"), row.text("dish")));
    return out;
  }

  /** True while it is in the oven. */
  public boolean open() {
    return !inside.isEmpty();
  }
}
