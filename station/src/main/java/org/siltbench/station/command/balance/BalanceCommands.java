package org.siltbench.station.command.balance;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class BalanceCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("balance watch", "show live readings of a balance", WatchCommand::new),
        new CommandEntry("balance find", "list ports, find line settings", FindCommand::new),
        new CommandEntry("balance learn", "learn a balance's line format", LearnCommand::new));
  }
}
