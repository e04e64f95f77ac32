package org.siltbench.station.work.lot;

import java.util.List;
import org.siltbench.station.life.About;
import org.siltbench.station.life.LotState;
import org.siltbench.station.register.RegisterView;

/** Finds lots. */
public final class LotList {

  private LotList() {}

  /**
   * A lot and what its filters may weigh.
   *
   * @param lot the lot
   * @param window the masses its filters may have, or empty while nothing is known
   */
  public record Line(LotState lot, String window) {}

  /** All lots, by name. */
  public static List<Line> all(RegisterView register) {
    return register.list(About.LOT, "", "").stream()
        .map(row -> row.subject().id())
        .flatMap(name -> LotState.fold(name, register.history(About.lot(name))).stream())
        .map(
            lot ->
                new Line(
                    lot, LotMasses.window(register, lot.name()).map(MassWindow::text).orElse("")))
        .toList();
  }
}
