package org.siltbench.balance;

import java.time.Instant;
import org.siltbench.balance.format.LineFormat;
import org.siltbench.balance.link.Link;
import org.siltbench.balance.practice.Practice;
import org.siltbench.balance.practice.PracticeSetup;

class PracticeLinkTest extends SimulatedLinkContract {

  @Override
  Link link() {
    PracticeSetup setup = PracticeSetup.seeded(7);
    return Practice.link(setup, LineFormat.standard(), new VirtualTime(Instant.EPOCH), null);
  }
}
