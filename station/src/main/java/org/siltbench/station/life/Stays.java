package org.siltbench.station.life;

import java.util.Optional;
import org.siltbench.station.ledger.Entry;

/** Reads the stay of one filter from the entries of a drying cycle. */
final class Stays {

  private Stays() {}

  static Optional<Stay> begun(String filter, Entry entry, Fields data) {
    return data.rows("filters").stream()
        .filter(row -> row.text("filter").equals(filter))
        .findFirst()
        .map(row -> stay(row.text("dish"), entry, data));
  }

  private static Stay stay(String dish, Entry entry, Fields data) {
    return new Stay(
        data.text("cycle"),
        dish,
        data.find("purpose").orElse("post"),
        data.time("in").orElse(entry.at()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        !data.text("observed").equals("false"),
        true);
  }

  static Stay ended(Stay stay, Entry entry, Fields data) {
    return new Stay(
        stay.cycle(),
        stay.dish(),
        stay.purpose(),
        stay.in(),
        Optional.of(data.time("out").orElse(entry.at())),
        data.time("cooled_until"),
        data.time("useful_until"),
        stay.observed() && !data.text("observed").equals("false"),
        !data.text("in_range").equals("false"));
  }

  static Act actOf(Stay stay) {
    return switch (stay.purpose()) {
      case "pre" -> Act.PRE_DRY;
      case "ignition" -> Act.IGNITE;
      default -> Act.DRY;
    };
  }
}
