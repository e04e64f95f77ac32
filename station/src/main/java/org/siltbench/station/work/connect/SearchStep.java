package org.siltbench.station.work.connect;

import java.util.List;
import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.find.PortFacts;
import org.siltbench.balance.link.LinkSpec;
import org.siltbench.calc.reason.Reason;

/** What a search for a balance tells on its way; {@link SearchWords} has the sentences. */
public sealed interface SearchStep {

  /** The ports that the system lists. */
  record Ports(List<PortFacts> ports) implements SearchStep {
    /** Copies. */
    public Ports {
      ports = List.copyOf(ports);
    }
  }

  /**
   * One setting was listened to.
   *
   * @param attempt what was heard
   * @param tried how many settings have been tried on this port
   * @param atMost how many will be, if none is readable
   */
  record Heard(Attempt attempt, int tried, int atMost) implements SearchStep {}

  /** A port that cannot be opened, and why; the search of the others goes on. */
  record PassedOver(LinkSpec spec, Reason why, Reason next) implements SearchStep {}
}
