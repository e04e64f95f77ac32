package org.siltbench.station.command.people;

import java.util.Map;
import org.siltbench.station.command.Session;
import org.siltbench.station.command.Task;
import picocli.CommandLine.Parameters;

/** {@code people remove}. */
final class PeopleRemove implements Task {

  @Parameters(index = "0", paramLabel = "INITIALS", description = "the person's initials")
  private String initials = "";

  @Override
  public int run(Session session) {
    session.supervisor();
    session.people().remove(initials);
    session.fact(initials + " is off the list. What they recorded stays theirs.");
    session.document(Map.of("removed", initials));
    return 0;
  }
}
