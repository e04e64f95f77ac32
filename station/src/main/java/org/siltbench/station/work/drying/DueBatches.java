package org.siltbench.station.work.drying;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.batch.Batches;

/** Which batches have filters that wait for the oven. */
public final class DueBatches {

  private DueBatches() {}

  /**
   * A batch with filters for the oven.
   *
   * @param batch the batch
   * @param filters those that wait, by ID
   */
  public record Waiting(BatchState batch, List<FilterState> filters) {}

  /** The batches with filters for this purpose. */
  public static List<Waiting> of(RegisterView register, Purpose purpose) {
    List<Waiting> out = new ArrayList<>();
    for (BatchState batch : Batches.all(register)) {
      List<FilterState> due =
          Filters.ofBatch(register, batch.code()).stream()
              .filter(state -> Due.isDue(state, purpose))
              .toList();
      if (!due.isEmpty()) {
        out.add(new Waiting(batch, due));
      }
    }
    return out;
  }
}
