package org.siltbench.station.command.calculate;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class CalculateCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("calc", "calculate a table of masses and volumes", CalcCommand::new),
        new CommandEntry(
            "limits", "detection limits from spikes, blanks or a calibration", LimitsCommand::new),
        new CommandEntry("ratio", "turn ppm by mass into mg/L, or back", RatioCommand::new),
        new CommandEntry("methods", "the methods and their numbers", MethodsCommand::new));
  }
}
