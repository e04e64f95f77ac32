package org.siltbench.station.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;

/**
 * Everything a command takes from outside, so that a test can give its own.
 *
 * @param console input and output
 * @param clock the time
 * @param environment the variables
 * @param home the person's home folder
 * @param user the system's user
 * @param labs opens lab folders
 * @param commands the commands there are
 */
public record Surroundings(
    Console console,
    Clock clock,
    Map<String, String> environment,
    Path home,
    String user,
    Labs labs,
    List<CommandEntry> commands) {

  /** Copies the lists. */
  public Surroundings {
    environment = Map.copyOf(environment);
    commands = List.copyOf(commands);
  }
}
