package org.siltbench.station.life;

import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.siltbench.station.ledger.Entry;

/**
 * A drying cycle, folded from its history.
 *
 * @param id its name
 * @param purpose pre, post or ignition
 * @param dishes filter to dish, in the order they went in; the dish may be empty
 * @param in when the oven was back in range with the last of them
 * @param out when they came out
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
    Optional<Entry> ended = Live.newest(history, "dry.ended");
    Fields end = ended.map(Fields::of).orElse(Fields.of(Map.of()));
    return new CycleState(
        id,
        start.find("purpose").orElse("post"),
        dishes(history),
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
    return out.isEmpty();
  }
}
