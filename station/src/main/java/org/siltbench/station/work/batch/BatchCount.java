package org.siltbench.station.work.batch;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.register.RegisterView;

/**
 * A batch, and how many of its filters are where.
 *
 * @param batch the batch
 * @param counts filters by status; none where there is none
 */
public record BatchCount(BatchState batch, Map<Status, Integer> counts) {

  /** All batches, the newest first. */
  public static List<BatchCount> all(RegisterView register) {
    return Batches.all(register).stream()
        .sorted((a, b) -> b.created().compareTo(a.created()))
        .map(batch -> of(register, batch))
        .toList();
  }

  private static BatchCount of(RegisterView register, BatchState batch) {
    Map<Status, Integer> counts = new EnumMap<>(Status.class);
    for (FilterState filter : Filters.ofBatch(register, batch.code())) {
      counts.merge(filter.status(), 1, Integer::sum);
    }
    return new BatchCount(batch, counts);
  }
}
