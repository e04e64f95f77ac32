package org.siltbench.station.window.drying;

import java.time.Clock;
import java.time.OffsetDateTime;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.work.Typed;
import org.siltbench.station.work.drying.Heat;

/** What is typed at the oven: temperature, thermometer, and the moment if it was not now. */
final class Gauge {

  final StringProperty temperature = new SimpleStringProperty("");
  final StringProperty thermometer = new SimpleStringProperty("");
  final StringProperty moment = new SimpleStringProperty("");

  /** What stood in the fields, to be read on another thread. */
  record Said(String temperature, String thermometer, String moment) {

    Heat heat(Texts texts) {
      return new Heat(Typed.decimal(texts.get("name.temperature"), temperature), thermometer);
    }

    @Nullable OffsetDateTime at(Texts texts, Clock clock) {
      return Typed.past(texts.get("name.moment"), moment, clock);
    }
  }

  Said said() {
    return new Said(temperature.get(), thermometer.get().strip(), moment.get());
  }

  /** The thermometer stays; what it said does not. */
  void clear() {
    temperature.set("");
    moment.set("");
  }
}
