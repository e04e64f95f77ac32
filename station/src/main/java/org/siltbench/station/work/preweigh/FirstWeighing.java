package org.siltbench.station.work.preweigh;

import java.util.Map;
import java.util.function.Consumer;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.calc.method.Method;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.batch.NewBatch;
import org.siltbench.station.work.method.MethodBook;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Scale;
import org.siltbench.station.work.weigh.WeighEvent;

/**
 * One clean filter, weighed as every other one, for somebody who has never done it. In a practice
 * lab only: it makes a batch of its own.
 *
 * @param batch the batch, of one filter
 * @param method its method
 */
public record FirstWeighing(BatchState batch, Method method) {

  private static final String METHOD = "epa-160.2";
  private static final String NAME = "First weighing";

  /** Makes the batch. */
  public static FirstWeighing prepare(Bench bench, MethodBook methods) {
    if (!bench.practice()) {
      throw new Problem.Refused(PreWeighSays.NO_PRACTICE_LAB);
    }
    long before =
        Batches.all(bench.register()).stream().filter(b -> b.name().startsWith(NAME)).count();
    String name = before == 0 ? NAME : NAME + " " + (before + 1);
    BatchState made =
        new NewBatch(name, "practice lot", METHOD, 1, Map.of(), 0).record(bench, methods).batch();
    return new FirstWeighing(made, methods.inForce(bench.register(), METHOD));
  }

  /** How the pan is watched for it. */
  public PanSettings pans() {
    return Pans.filters(method);
  }

  /** Weighs the filter. */
  public PreWeighReport run(Bench bench, Scale scale, Consumer<WeighEvent> listener)
      throws InterruptedException {
    PreWeighSettings settings = new PreWeighSettings(method, scale.name(), 1, 0, null, null);
    return new PreWeighRun(bench, batch, scale.pan(), settings, AfterRecord.NOTHING, listener)
        .run();
  }
}
