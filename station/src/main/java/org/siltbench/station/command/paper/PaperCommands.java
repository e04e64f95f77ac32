package org.siltbench.station.command.paper;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class PaperCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("labels", "bag labels, to a file or a printer", LabelsCommand::new),
        new CommandEntry(
            "fieldsheet", "the sheet for the field, on paper or as a table", SheetCommand::new),
        new CommandEntry(
            "ruler", "make a printer true on one kind of label stock", RulerCommand::new));
  }
}
