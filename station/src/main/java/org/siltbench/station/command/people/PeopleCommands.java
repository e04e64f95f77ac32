package org.siltbench.station.command.people;

import java.util.List;
import org.siltbench.station.command.CommandEntry;
import org.siltbench.station.command.CommandProvider;

/** Offers the commands of this package. */
public final class PeopleCommands implements CommandProvider {

  @Override
  public List<CommandEntry> commands() {
    return List.of(
        new CommandEntry("people list", "who is registered, with which right", PeopleList::new),
        new CommandEntry(
            "people add", "register a person, or change right and PIN", PeopleAdd::new),
        new CommandEntry("people remove", "take a person off the list", PeopleRemove::new));
  }
}
