package org.siltbench.station.work.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.Weighed;
import org.siltbench.station.register.RegisterView;

/** Answers for a loose clean filter: which open ID has this mass? */
public final class Owners {

  private Owners() {}

  /**
   * One candidate.
   *
   * @param off the loose filter's mass less the recorded one
   */
  public record Candidate(FilterState filter, Weighed recorded, Mass off) {}

  /** The clean filters of a batch whose mass is within a limit of this one, nearest first. */
  public static List<Candidate> of(RegisterView register, String batch, Mass mass, Mass within) {
    List<Candidate> out = new ArrayList<>();
    for (FilterState filter : Filters.ofBatch(register, batch)) {
      boolean clean = filter.status() == Status.PRE_WEIGHED || filter.status() == Status.ISSUED;
      filter
          .preMass()
          .filter(weighed -> clean)
          .map(weighed -> new Candidate(filter, weighed, mass.minus(weighed.mass())))
          .filter(candidate -> candidate.off().abs().compareTo(within) <= 0)
          .ifPresent(out::add);
    }
    out.sort(Comparator.comparing(candidate -> candidate.off().abs()));
    return out;
  }
}
