package org.siltbench.station.work.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * One check by itself, as every morning.
 *
 * @param weight the weight
 * @param phase when it is made
 * @param limit how far off the balance may be
 */
public record SingleCheck(CheckWeight weight, Phase phase, Mass limit) {

  /** Under the limit of a method. */
  public static SingleCheck under(
      Bench bench, MethodBook methods, String method, String weight, Phase phase) {
    return new SingleCheck(
        CheckWeight.named(bench.register(), weight),
        phase,
        methods.inForce(bench.register(), method).balance().checkLimit());
  }

  /** What to know of the weight before. */
  public List<Words> warnings(LocalDate today) {
    List<Words> out = new ArrayList<>();
    if (weight.standardUncertainty() == null) {
      out.add(Said.of(CheckSays.NO_CERTIFICATE, weight.name()));
    }
    if (weight.overdue(today)) {
      out.add(Said.of(CheckSays.OVERDUE, weight.name()));
    }
    return out;
  }

  /** How the pan is watched for it. */
  public PanSettings pans() {
    return Pans.weight(weight.nominal());
  }

  /** Weighs and records. */
  public CheckWeighing.Checked weigh(Bench bench, Scale scale, Consumer<WeighEvent> listener)
      throws InterruptedException {
    return new CheckWeighing(bench, scale.pan(), scale.name(), limit, listener)
        .weigh(weight, phase);
  }
}
