package org.siltbench.station.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.siltbench.station.bench.OpenLab;

/** Finds, makes and opens lab folders for the commands. */
public interface Labs {

  /** True if there is a lab in this folder. */
  boolean exists(Path dir);

  /** Opens a lab that is there. */
  OpenLab open(Path dir, Who who);

  /** Makes a new lab and opens it. */
  OpenLab create(Path dir, Who who, String name, boolean practice);

  /**
   * Who opens it.
   *
   * @param operator the initials for the entries
   * @param pin the PIN, asked for only where the lab has registered people; empty if there is none
   * @param clock the clock for the entries
   * @param notes takes sentences for the person
   */
  record Who(
      String operator, Supplier<Optional<char[]>> pin, Clock clock, Consumer<String> notes) {}
}
