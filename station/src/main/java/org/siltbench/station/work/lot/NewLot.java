package org.siltbench.station.work.lot;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.About;
import org.siltbench.station.life.LotState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.Names;

/**
 * A lot to record.
 *
 * @param name what people call it
 * @param makerLot the maker's lot number
 * @param material for example glass fibre without binder
 * @param poreUm nominal pore size, µm
 * @param diameterMm diameter, mm
 * @param washed rinsed with clean water before drying
 * @param dried dried before pre-weighing
 * @param muffled heated to the ignition temperature before pre-weighing
 * @param window the masses its filters may have; null to learn it from the weighings
 */
public record NewLot(
    String name,
    @Nullable String makerLot,
    @Nullable String material,
    @Nullable BigDecimal poreUm,
    @Nullable BigDecimal diameterMm,
    boolean washed,
    boolean dried,
    boolean muffled,
    @Nullable MassWindow window) {

  /** Refuses a size that is none. */
  public NewLot {
    name = Names.check("lot", name);
    positive("pore size", "µm", poreUm);
    positive("diameter", "mm", diameterMm);
  }

  private static void positive(String what, String unit, @Nullable BigDecimal value) {
    if (value != null && (value.signum() <= 0 || value.compareTo(BigDecimal.valueOf(1000)) > 0)) {
      throw new Problem.WrongUse(LotSays.NOT_POSSIBLE, what, value.toPlainString(), unit);
    }
  }

  /** A lot known by name only; it can be described later. */
  public static NewLot namedOnly(String name) {
    return new NewLot(name, null, null, null, null, false, true, false, null);
  }

  /**
   * Records it.
   *
   * @throws Problem.Refused if a lot of that name has been described before
   */
  public Entry record(Bench bench) {
    return bench
        .act(
            register -> {
              requireNew(register);
              return List.of(draft(true));
            })
        .get(0);
  }

  private void requireNew(RegisterView register) {
    if (LotState.fold(name, register.history(About.lot(name)))
        .filter(lot -> !lot.fields().text("described").equals("false"))
        .isPresent()) {
      throw new Problem.Refused(LotSays.EXISTS, name);
    }
  }

  /** The entry; {@code described} is false for a lot known by name only. */
  public Draft draft(boolean described) {
    MassWindow masses = window;
    Facts facts =
        new Facts()
            .put("lot", name)
            .putIf("maker_lot", makerLot)
            .putIf("material", material)
            .putIf("pore_um", poreUm)
            .putIf("diameter_mm", diameterMm);
    if (described) {
      facts.put("washed", washed).put("dried", dried).put("muffled", muffled);
    }
    facts.put("described", described);
    return facts.putIf("window_g", masses == null ? null : masses.text()).draft("lot.created");
  }
}
