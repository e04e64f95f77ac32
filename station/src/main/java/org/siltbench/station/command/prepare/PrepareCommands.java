package org.siltbench.station.command.prepare;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class PrepareCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("lab new", "make a lab folder, for real or practice work", LabNew::new),
        new CommandEntry("plan", "how many filters to prepare, how much water", Plan::new),
        new CommandEntry("lot new", "record a maker's lot of filters", LotNew::new),
        new CommandEntry("lot test", "record and judge a lot's blank-loss test", LotTest::new),
        new CommandEntry("lot list", "the lots, their tests and mass windows", LotList::new),
        new CommandEntry("batch new", "make a batch and its filter IDs", BatchNew::new),
        new CommandEntry("batch list", "the batches and their filters", BatchList::new),
        new CommandEntry("balance describe", "record a balance's figures", BalanceDescribe::new),
        new CommandEntry("weight", "record a check weight and its certificate", WeightNote::new),
        new CommandEntry("room", "record the air of the room", RoomNote::new),
        new CommandEntry("issue", "give bags out to a trip, take unused ones back", IssueBags::new),
        new CommandEntry("custody", "record bags changing hands", CustodyLine::new));
  }
}
