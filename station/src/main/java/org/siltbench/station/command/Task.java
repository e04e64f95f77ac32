package org.siltbench.station.command;

import java.io.IOException;

/** What one command does. Options are picocli's annotations on its fields. */
public interface Task {

  /**
   * Does it and answers the exit status: 0 done, 1 refused by a rule of the job. A {@link
   * org.siltbench.station.Problem} thrown here is told to the person and becomes its own status; an
   * {@link IOException} is something outside: 3.
   */
  int run(Session session) throws IOException, InterruptedException;
}
