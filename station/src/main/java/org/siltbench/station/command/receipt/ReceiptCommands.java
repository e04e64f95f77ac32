package org.siltbench.station.command.receipt;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class ReceiptCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry(
            "receive", "take returned bags in with their field notes", ReceiveCommand::new));
  }
}
