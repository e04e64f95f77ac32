package org.siltbench.station.command.weigh;

import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.bench.Bench;
import org.siltbench.station.command.Session;
import org.siltbench.station.work.weigh.Scale;

/** Opens the lab for a weighing; the practice balance makes no new lab that is not for practice. */
public final class Practised {

  private Practised() {}

  /** The lab, made on first use unless the practice balance is named. */
  public static Bench bench(Session session, String spec) {
    boolean practice = Scale.parse(spec) instanceof LinkSpec.Practice;
    if (practice && !session.labExists()) {
      throw Scale.noPractice();
    }
    return session.bench();
  }
}
