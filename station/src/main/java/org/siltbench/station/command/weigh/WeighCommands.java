package org.siltbench.station.command.weigh;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class WeighCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("checkweight", "check the balance with a check weight", CheckCommand::new),
        new CommandEntry("control", "control chart of checks or blanks", ControlCommand::new),
        new CommandEntry("preweigh", "weigh clean filters, hands-free", PreWeighCommand::new),
        new CommandEntry(
            "postweigh", "weigh loaded filters by scans on standard input", PostWeighCommand::new),
        new CommandEntry("audit", "weigh some filters again out of their bags", AuditCommand::new),
        new CommandEntry("fit", "which open ID has a loose filter's mass?", FitCommand::new));
  }
}
