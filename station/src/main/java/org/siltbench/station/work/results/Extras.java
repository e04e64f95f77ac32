package org.siltbench.station.work.results;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.result.Fraction;
import org.siltbench.calc.result.RowExtras;
import org.siltbench.station.life.About;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.LotState;
import org.siltbench.station.life.SampleRecord;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.lot.LotFitness;

/** What few filters have beside masses and a volume: a mass after the furnace, a sieve's part. */
final class Extras {

  private final Optional<LotState> lot;

  Extras(RegisterView register, String lotName) {
    this.lot = LotState.fold(lotName, register.history(About.lot(lotName)));
  }

  /** Null for most filters. */
  @Nullable RowExtras of(FilterState state) {
    Optional<SampleRecord> record = state.record();
    Mass ignited = ignited(state);
    Fraction part = record.map(r -> Fraction.of(r.text("part"))).orElse(null);
    Double expected = number(record, "expected_mg_l");
    if (ignited == null && part == null && expected == null) {
      return null;
    }
    boolean burnt = ignited != null;
    return new RowExtras(
        part,
        ignited,
        burnt ? LotFitness.material(lot) : null,
        burnt ? muffled() : null,
        expected,
        number(record, "expected_u_mg_l"),
        null,
        false,
        null,
        null,
        null);
  }

  /**
   * What was refused at the furnace cannot be here; what the lot's record does not say is flagged.
   */
  private @Nullable Double muffled() {
    Double celsius = LotFitness.muffled(lot);
    return celsius != null && celsius > 0 ? celsius : null;
  }

  private static @Nullable Mass ignited(FilterState state) {
    List<Weighed> after = state.ignited();
    return after.isEmpty() ? null : after.get(after.size() - 1).mass();
  }

  private static @Nullable Double number(Optional<SampleRecord> record, String name) {
    return record
        .flatMap(r -> r.fields().decimal(name))
        .map(Number::doubleValue)
        .filter(value -> value >= 0)
        .orElse(null);
  }
}
