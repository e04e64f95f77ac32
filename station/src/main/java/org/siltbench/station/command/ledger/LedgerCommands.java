package org.siltbench.station.command.ledger;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class LedgerCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("verify", "prove that the ledger is whole", VerifyCommand::new),
        new CommandEntry("rebuild", "make the register again from the ledger", RebuildCommand::new),
        new CommandEntry("close", "end the day: sign the ledger's newest hash", CloseCommand::new),
        new CommandEntry("share", "exchange entries with the lab's server", ShareCommand::new),
        new CommandEntry("backup", "copy the ledgers to another place", BackupCommand::new),
        new CommandEntry("restore", "make a new bench from a backup", RestoreCommand::new));
  }
}
