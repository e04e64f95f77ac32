package org.siltbench.demo.run;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Adds {@code demo}. */
public final class DemoCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("demo", "the whole job on a simulated balance", DemoCommand::new));
  }
}
