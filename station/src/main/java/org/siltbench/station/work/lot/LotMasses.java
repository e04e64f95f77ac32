package org.siltbench.station.work.lot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.life.About;
import org.siltbench.station.life.Fields;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.LotState;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.StateRow;

/** What is known of the masses of one lot. */
public final class LotMasses {

  private LotMasses() {}

  /** The window recorded with the lot, else the one its weighed filters give. */
  public static Optional<MassWindow> window(RegisterView register, String lot) {
    return window(register, lot, clean(register, lot));
  }

  /** The same where the masses of the weighed filters are at hand. */
  public static Optional<MassWindow> window(RegisterView register, String lot, List<Mass> seen) {
    Optional<String> recorded =
        LotState.fold(lot, register.history(About.lot(lot)))
            .map(LotState::fields)
            .flatMap(fields -> fields.find("window_g"));
    return recorded.isPresent() ? recorded.map(MassWindow::parse) : MassWindow.around(seen);
  }

  /** The pre-weigh masses of the lot's filters, rejected ones left out. */
  public static List<Mass> clean(RegisterView register, String lot) {
    List<Mass> masses = new ArrayList<>();
    for (StateRow batch : register.list(About.BATCH, lot, "")) {
      for (FilterState filter : Filters.ofBatch(register, batch.subject().id())) {
        if (filter.status() != Status.REJECTED) {
          filter.preMass().ifPresent(weighed -> masses.add(weighed.mass()));
        }
      }
    }
    return masses;
  }

  /** The area of one filter, cm², if its diameter is known. */
  static Optional<Double> areaCm2(LotState lot) {
    Fields fields = lot.fields();
    return fields.decimal("diameter_mm").map(mm -> Math.PI * Math.pow(mm.doubleValue() / 20, 2));
  }
}
