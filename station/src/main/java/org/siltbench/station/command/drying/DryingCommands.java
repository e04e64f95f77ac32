package org.siltbench.station.command.drying;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class DryingCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("dry start", "put filters into the oven", DryStartCommand::new),
        new CommandEntry("dry end", "take filters out to cool", DryEndCommand::new),
        new CommandEntry("dry list", "drying cycles and what is in them", DryListCommand::new));
  }
}
