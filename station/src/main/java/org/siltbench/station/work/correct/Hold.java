package org.siltbench.station.work.correct;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.Act;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Life;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.Facts;

/**
 * Results are kept back, or set free again.
 *
 * @param filters whose results
 * @param lift true to set them free
 * @param reason why
 */
public record Hold(List<String> filters, boolean lift, String reason) {

  /** Copies the list. */
  public Hold {
    filters = List.copyOf(filters);
    reason = Reasons.check(reason);
    if (filters.isEmpty()) {
      throw new Problem.WrongUse(CorrectSays.NONE_NAMED);
    }
  }

  /** Writes it, one entry a batch. */
  public List<Entry> record(Bench bench) {
    return bench.act(this::drafts);
  }

  private List<Draft> drafts(RegisterView register) {
    Map<String, List<String>> byBatch = new LinkedHashMap<>();
    for (String id : filters) {
      FilterState state = Filters.require(register, id);
      Life.require(id, state.status(), Act.HOLD, state.role());
      if (lift && state.holds().isEmpty()) {
        throw new Problem.Refused(CorrectSays.NOT_HELD, id);
      }
      byBatch.computeIfAbsent(state.batch(), k -> new ArrayList<>()).add(id);
    }
    List<Draft> out = new ArrayList<>();
    byBatch.forEach(
        (batch, ids) -> {
          Facts facts = new Facts().put("batch", batch).put("filters", ids);
          if (lift) {
            facts.put("lifted", true).put("override", true);
          }
          out.add(facts.put("reason", reason).draft("hold"));
        });
    return out;
  }
}
