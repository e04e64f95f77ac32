package org.siltbench.station.command.exchange;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class ExchangeCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry(
            "files",
            "take line formats, methods and label stock in, or give them out",
            FilesCommand::new));
  }
}
