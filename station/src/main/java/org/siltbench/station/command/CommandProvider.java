package org.siltbench.station.command;

import java.util.List;

/**
 * Offers commands; found by {@link java.util.ServiceLoader}, so that other modules can add theirs.
 * Must not load the commands themselves.
 */
public interface CommandProvider {

  /** The commands offered. */
  List<CommandEntry> commands();
}
