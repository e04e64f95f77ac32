package org.siltbench.station.window.preweigh;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.calc.method.Method;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.check.CheckWeight;
import org.siltbench.station.work.preweigh.PrePlan;
import org.siltbench.station.work.weigh.Pans;

/**
 * What a pre-weighing is set up with; asked for before the first load.
 *
 * @param batch the batch
 * @param method its method in force
 * @param weight the check weight, or null to check apart
 * @param pans how the pan is watched
 * @param due how many filters need a mass
 */
record PreSetup(
    BatchState batch, Method method, @Nullable CheckWeight weight, PanSettings pans, int due) {

  /** Asks the register; on the bench's thread. */
  static PreSetup of(Desk desk, String batchName, String weightName) {
    RegisterView register = desk.lab().register();
    BatchState batch = Batches.require(register, batchName);
    Method method = desk.methods().inForce(register, batch.method());
    Optional<CheckWeight> weight =
        weightName.isBlank()
            ? Optional.empty()
            : Optional.of(CheckWeight.named(register, weightName));
    PanSettings filters = Pans.filters(method);
    return new PreSetup(
        batch,
        method,
        weight.orElse(null),
        weight.map(w -> Pans.with(filters, w.nominal())).orElse(filters),
        PrePlan.of(register, batch, method).due().size());
  }
}
