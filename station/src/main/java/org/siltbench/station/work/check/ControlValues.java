package org.siltbench.station.work.check;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.siltbench.calc.blank.BlankKind;
import org.siltbench.station.life.About;
import org.siltbench.station.life.BalanceState;
import org.siltbench.station.life.BalanceState.Check;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;
import org.siltbench.station.work.batch.Batches;
import org.siltbench.station.work.check.ControlSheet.Given;

/** What a control chart is drawn of: the checks of a balance, or the blanks of a method. */
public final class ControlValues {

  private ControlValues() {}

  /**
   * The errors of a balance's checks, mg.
   *
   * @param weight one weight's only; empty for all
   */
  public static List<Given> checks(RegisterView register, String balance, String weight) {
    List<Check> checks =
        BalanceState.fold(balance, register.history(About.balance(balance)))
            .map(BalanceState::checks)
            .orElse(List.of());
    return checks.stream()
        .filter(c -> weight.isEmpty() || c.fields().text("weight").equals(weight))
        .map(c -> new Given(c.at(), c.fields().text("weight"), c.fields().number("error_mg", 0)))
        .toList();
  }

  /** The residues of a method's blanks of one kind, mg, by the time of their last weighing. */
  public static List<Given> blanks(RegisterView register, String method, BlankKind kind) {
    List<Given> out = new ArrayList<>();
    for (BatchState batch : Batches.all(register)) {
      if (batch.method().equals(method)) {
        for (String id : batch.filters().keySet()) {
          Filters.find(register, id).flatMap(state -> blank(state, kind)).ifPresent(out::add);
        }
      }
    }
    out.sort(Comparator.comparing((Given given) -> given.at().toInstant()));
    return out;
  }

  private static Optional<Given> blank(FilterState state, BlankKind kind) {
    Optional<Weighed> pre = state.preMass();
    Optional<Weighed> post = state.postMass();
    boolean right = state.role().code().equals(kind.word()) && state.status() != Status.REJECTED;
    if (!right || pre.isEmpty() || post.isEmpty()) {
      return Optional.empty();
    }
    OffsetDateTime at = post.get().at();
    double mg = post.get().mass().minus(pre.get().mass()).milligrams();
    return Optional.of(new Given(at, state.id(), mg));
  }
}
