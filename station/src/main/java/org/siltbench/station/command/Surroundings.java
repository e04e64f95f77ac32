package org.siltbench.station.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.link.LinkSpec;

/**
 * Everything a command takes from outside, so that a test can give its own.
 *
 * @param console input and output
 * @param clock the time
 * @param environment the variables
 * @param home the person's home folder
 * @param user the system's user
 * @param labs opens lab folders
 * @param balances opens balances
 * @param commands the commands there are
 */
public record Surroundings(
    Console console,
    Clock clock,
    Map<String, String> environment,
    Path home,
    String user,
    Labs labs,
    Opening balances,
    List<CommandEntry> commands) {

  /** Opens the readings of a balance. */
  public interface Opening {

    /**
     * Opens what the link text names.
     *
     * @param formats the folder of saved line formats
     */
    ReadingSource open(LinkSpec spec, Path formats) throws IOException;
  }

  /** Copies the lists. */
  public Surroundings {
    environment = Map.copyOf(environment);
    commands = List.copyOf(commands);
  }
}
