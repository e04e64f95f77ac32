package org.siltbench.station.work.drying;

import java.util.List;
import java.util.Optional;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.register.RegisterView;

/** Finds drying cycles. */
public final class DryCycles {

  private DryCycles() {}

  public static Optional<CycleState> find(RegisterView register, String id) {
    return CycleState.fold(id, register.history(About.cycle(id)));
  }

  /** Cycles with filters still in the oven, by id. */
  public static List<CycleState> open(RegisterView register) {
    return register.list(About.CYCLE, "", "open").stream()
        .flatMap(row -> find(register, row.subject().id()).stream())
        .toList();
  }

  /** The named cycle, or the only open one if none is named. */
  public static CycleState require(RegisterView register, String id) {
    if (!id.isEmpty()) {
      return find(register, id).orElseThrow(() -> new Problem.Refused(DryingSays.NO_CYCLE, id));
    }
    List<CycleState> open = open(register);
    if (open.size() == 1) {
      return open.get(0);
    }
    throw open.isEmpty()
        ? new Problem.Refused(DryingSays.NONE_RUNNING)
        : new Problem.Refused(
            DryingSays.SEVERAL_RUNNING,
            String.join(", ", open.stream().map(CycleState::id).toList()));
  }

  /** The name of this bench's next cycle. */
  static String next(RegisterView register, String bench) {
    String prefix = bench + "-D";
    int last =
        register.list(About.CYCLE, "", "").stream()
            .map(row -> row.subject().id())
            .filter(id -> id.startsWith(prefix))
            .mapToInt(id -> number(id.substring(prefix.length())))
            .max()
            .orElse(0);
    return prefix + (last + 1);
  }

  private static int number(String text) {
    return text.matches("\\d{1,8}") ? Integer.parseInt(text) : 0;
  }
}
