package org.siltbench.station.work.equip;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.work.Facts;

/**
 * The air of the room.
 *
 * @param temperatureC °C
 * @param pressureHpa hPa
 * @param humidityPct relative humidity, %
 * @param statedAt when, if not now
 */
public record RoomRecord(
    @Nullable BigDecimal temperatureC,
    @Nullable BigDecimal pressureHpa,
    @Nullable BigDecimal humidityPct,
    @Nullable OffsetDateTime statedAt) {

  /** Refuses air that no bench stands in. */
  public RoomRecord {
    if (temperatureC == null && pressureHpa == null && humidityPct == null) {
      throw new Problem.WrongUse(EquipSays.NOTHING_NOTED);
    }
    within("A temperature", temperatureC, -10, 50, "°C");
    within("A pressure", pressureHpa, 500, 1100, "hPa");
    within("A humidity", humidityPct, 0, 100, "%");
  }

  private static void within(
      String what, @Nullable BigDecimal value, int low, int high, String unit) {
    if (value != null && (value.doubleValue() < low || value.doubleValue() > high)) {
      throw new Problem.WrongUse(
          EquipSays.NOT_POSSIBLE, what, value.toPlainString(), unit, low, high);
    }
  }

  /** Records it. */
  public Entry record(Bench bench) {
    Facts facts =
        new Facts()
            .putIf("temperature_c", temperatureC)
            .putIf("pressure_hpa", pressureHpa)
            .putIf("humidity_pct", humidityPct)
            .stated(statedAt);
    return bench.act(register -> List.of(facts.draft("room.noted"))).get(0);
  }
}
