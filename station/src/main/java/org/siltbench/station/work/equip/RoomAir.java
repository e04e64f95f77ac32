package org.siltbench.station.work.equip;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.air.AirDensity;
import org.siltbench.calc.air.AirFormula;
import org.siltbench.calc.air.AirState;
import org.siltbench.calc.air.BuoyancyChange;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.register.RegisterView;

/** The density of the room's air, as far as notes of the room tell it. */
public final class RoomAir {

  /** Where the humidity was not noted, %: half, as rooms are; it counts for little. */
  private static final double USUAL_HUMIDITY = 50;

  private static final double USUAL_FILTER_MG = 120;
  private static final double GLASS = 2500;
  private static final double GLASS_U = 50;

  private final List<Noted> notes = new ArrayList<>();

  /** The density at a time. */
  public record Noted(OffsetDateTime at, AirDensity density) {}

  private RoomAir(List<Entry> history) {
    for (Entry entry : history) {
      if (entry.kind().equals("room.noted")) {
        Fields fields = Fields.of(entry);
        density(fields)
            .ifPresent(
                air -> notes.add(new Noted(fields.time("stated_at").orElse(entry.at()), air)));
      }
    }
  }

  /** The air of a bench's room. */
  public static RoomAir of(RegisterView register, String bench) {
    return new RoomAir(register.history(About.room(bench)));
  }

  /** Needs temperature and pressure; empty where CIPM-2007 is not stated for such air. */
  private static Optional<AirDensity> density(Fields fields) {
    double celsius = fields.number("temperature_c", Double.NaN);
    double pressure = fields.number("pressure_hpa", Double.NaN);
    if (Double.isNaN(celsius) || Double.isNaN(pressure)) {
      return Optional.empty();
    }
    AirState air = new AirState(celsius, pressure, fields.number("humidity_pct", USUAL_HUMIDITY));
    return AirFormula.CIPM_2007.covers(air)
        ? Optional.of(AirDensity.of(air, AirFormula.CIPM_2007))
        : Optional.empty();
  }

  /** The newest density. */
  public Optional<Noted> last() {
    return notes.isEmpty() ? Optional.empty() : Optional.of(notes.get(notes.size() - 1));
  }

  /** What the air's change since the note before does to a usual filter, mg; empty without one. */
  public Optional<BuoyancyChange> sinceTheNoteBefore() {
    if (notes.size() < 2) {
      return Optional.empty();
    }
    return Optional.of(
        BuoyancyChange.of(
            USUAL_FILTER_MG,
            GLASS,
            GLASS_U,
            notes.get(notes.size() - 2).density(),
            notes.get(notes.size() - 1).density(),
            BuoyancyChange.Adjustment.BEFORE_EACH_WEIGHING));
  }

  /**
   * The standard uncertainty of the change of density between two weighings within a time, kg/m³:
   * the spread of the notes as a rectangular half width. Empty with fewer than two notes.
   */
  public Optional<Double> changeWithin(OffsetDateTime from, OffsetDateTime to) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int count = 0;
    for (Noted note : notes) {
      if (!note.at().isBefore(from.minusDays(1)) && !note.at().isAfter(to.plusDays(1))) {
        low = Math.min(low, note.density().value());
        high = Math.max(high, note.density().value());
        count++;
      }
    }
    return count < 2 ? Optional.empty() : Optional.of((high - low) / Math.sqrt(3));
  }
}
