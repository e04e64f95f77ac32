package org.siltbench.station.life;

import java.util.Optional;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.ledger.Entry;

/** Reads a {@code weighing} entry. */
final class WeighedReader {

  private WeighedReader() {}

  static Optional<Weighed> read(Entry entry, Fields data) {
    return data.mass("mass_g").map(mass -> weighed(entry, data, mass));
  }

  private static Weighed weighed(Entry entry, Fields data, Mass mass) {
    return new Weighed(
        entry.ref(),
        data.text("status").equals("post"),
        mass,
        data.text("mass_g"),
        milligrams(data, "u_g"),
        milligrams(data, "resolution_g"),
        data.number("moisture_mg", 0),
        data.text("balance"),
        data.text("cycle"),
        data.find("purpose").orElse("result"),
        data.flag("keyed"),
        data.text("stability").equals("two presses"),
        !data.text("observed").equals("false"),
        data.time("stated_at").orElse(entry.at()),
        entry.by(),
        data.text("verdict"));
  }

  private static double milligrams(Fields data, String name) {
    return data.number(name, 0) * 1000;
  }
}
