package org.siltbench.station.life;

import java.util.List;
import java.util.Optional;
import org.siltbench.station.Problem;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.register.StateRow;

/** Typed questions to the register. */
public final class Filters {

  private Filters() {}

  /** The state of one filter; empty if no batch has it. */
  public static Optional<FilterState> find(RegisterView register, String id) {
    return FilterFold.fold(id, register.history(About.filter(id)));
  }

  /**
   * The state of one filter.
   *
   * @throws Problem.Refused if no batch has it
   */
  public static FilterState require(RegisterView register, String id) {
    return find(register, id).orElseThrow(() -> new Problem.Refused(LifeSays.NO_FILTER, id));
  }

  /** All filters of a batch, by ID. */
  public static List<FilterState> ofBatch(RegisterView register, String batchCode) {
    return register.list(About.FILTER, batchCode, "").stream()
        .map(StateRow::subject)
        .flatMap(subject -> find(register, subject.id()).stream())
        .toList();
  }
}
