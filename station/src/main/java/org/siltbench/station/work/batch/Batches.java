package org.siltbench.station.work.batch;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.register.RegisterView;

/** Finds batches. */
public final class Batches {

  private Batches() {}

  /** All batches, by code. */
  public static List<BatchState> all(RegisterView register) {
    return register.list(About.BATCH, "", "").stream()
        .map(row -> row.subject().id())
        .flatMap(code -> find(register, code).stream())
        .toList();
  }

  /**
   * The batch with this name or code.
   *
   * @throws Problem.Refused if there is none, or the name stands for several
   */
  public static BatchState require(RegisterView register, String nameOrCode) {
    Optional<BatchState> byCode = find(register, nameOrCode.strip().toUpperCase(Locale.ROOT));
    if (byCode.isPresent()) {
      return byCode.get();
    }
    List<BatchState> named = named(register, nameOrCode.strip());
    if (named.size() == 1) {
      return named.get(0);
    }
    throw named.isEmpty() ? unknown(nameOrCode) : several(nameOrCode, named);
  }

  static List<BatchState> named(RegisterView register, String name) {
    return all(register).stream().filter(batch -> batch.name().equals(name)).toList();
  }

  /** The batch with this code; empty if there is none. */
  public static Optional<BatchState> find(RegisterView register, String code) {
    return BatchState.fold(code, register.history(About.batch(code)));
  }

  private static Problem.Refused unknown(String name) {
    return new Problem.Refused(BatchSays.NO_BATCH, name);
  }

  private static Problem.Refused several(String name, List<BatchState> named) {
    return new Problem.Refused(
        BatchSays.SEVERAL, name, String.join(", ", named.stream().map(BatchState::code).toList()));
  }
}
