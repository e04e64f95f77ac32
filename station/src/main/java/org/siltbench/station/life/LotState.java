package org.siltbench.station.life;

import java.util.List;
import java.util.Optional;
import org.siltbench.station.ledger.Entry;

/**
 * A maker's lot, folded from its history.
 *
 * @param name what people call it
 * @param fields what was recorded at its creation
 * @param tests its blank-loss tests, oldest first
 */
public record LotState(String name, Fields fields, List<Fields> tests) {

  /** The lot; empty if it was never created. */
  public static Optional<LotState> fold(String name, List<Entry> history) {
    return Live.newest(history, "lot.created")
        .map(
            entry -> new LotState(name, Fields.of(entry), Live.of(history, "lot.tested").toList()));
  }

  /** True if it was recorded as not dried before pre-weighing. */
  public boolean undried() {
    return fields.text("dried").equals("false");
  }

  /** passed, failed, or untested. */
  public String verdict() {
    if (tests.isEmpty()) {
      return "untested";
    }
    return tests.get(tests.size() - 1).flag("pass") ? "passed" : "failed";
  }
}
