package org.siltbench.station.command.correct;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class CorrectCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("correct", "set a field of an earlier entry", CorrectCommand::new),
        new CommandEntry("swap", "exchange two filters in one act", SwapCommand::new),
        new CommandEntry("reject", "take a filter out, with a reason", RejectCommand::new),
        new CommandEntry("hold", "keep results back, or set them free", HoldCommand::new));
  }
}
