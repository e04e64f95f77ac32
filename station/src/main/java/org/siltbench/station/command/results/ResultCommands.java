package org.siltbench.station.command.results;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class ResultCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry(
            "results", "results of a batch, with report and tables", ResultsCommand::new),
        new CommandEntry("logsheet", "the weighing log of a batch", LogCommand::new),
        new CommandEntry("release", "release the results of a batch", ReleaseCommand::new));
  }
}
