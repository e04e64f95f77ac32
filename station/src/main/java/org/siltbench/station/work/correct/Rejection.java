package org.siltbench.station.work.correct;

import java.util.List;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.work.Facts;

/**
 * A filter is taken out for good.
 *
 * @param filter its ID
 * @param reason why
 */
public record Rejection(String filter, String reason) {

  /** Refuses an empty reason. */
  public Rejection {
    reason = Reasons.check(reason);
  }

  /** Writes it. */
  public Entry record(Bench bench) {
    return bench
        .act(
            register -> {
              FilterState state = Filters.require(register, filter);
              Life.require(filter, state.status(), Act.REJECT, state.role());
              return List.of(
                  new Facts().put("filter", filter).put("reason", reason).draft("filter.rejected"));
            })
        .get(0);
  }
}
