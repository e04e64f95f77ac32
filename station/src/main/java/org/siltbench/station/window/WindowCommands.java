package org.siltbench.station.window;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the window, which no words at all call too. */
public final class WindowCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(new CommandEntry("window", "open the bench window", WindowTask::new));
  }
}
