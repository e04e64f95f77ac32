package org.siltbench.station.command;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import org.siltbench.station.work.Progress;

/**
 * Tells how far long work is: as events where they were asked for, else to a terminal once it has
 * taken more than a second. Nothing is told into a file or a pipe. Ctrl+C stops it.
 */
public final class LongWork implements Progress {

  private static final Duration PATIENCE = Duration.ofSeconds(1);

  /** The clock is looked at once for so many. */
  private static final long LOOK = 4096;

  private final Session session;
  private final Instant begun;
  private Instant told;

  /** Work that begins now. */
  public LongWork(Session session) {
    this.session = session;
    this.begun = session.clock().instant();
    this.told = begun;
  }

  @Override
  public boolean goesOn(String what, int done, int of) {
    boolean worthALine =
        session.console().terminal()
            && Duration.between(begun, session.clock().instant()).compareTo(PATIENCE) > 0;
    session.progress(
        worthALine ? "Writing the " + what + ", step " + (done + 1) + " of " + of + " …" : "",
        Map.of("event", "progress", "what", what, "done", done, "of", of));
    return true;
  }

  /**
   * What grows to an end that is not known, told once a second at most.
   *
   * @param what is counted, in a word
   * @param done how many so far
   */
  public void counted(String what, long done) {
    if (done % LOOK == 0) {
      at(what, done);
    }
  }

  /** The same, of work that counts seldom enough for a look at the clock each time. */
  public void at(String what, long done) {
    Instant now = session.clock().instant();
    if (Duration.between(told, now).compareTo(PATIENCE) > 0) {
      told = now;
      session.progress(
          session.console().terminal()
              ? String.format(Locale.ROOT, "%,d %s so far …", done, what)
              : "",
          Map.of("event", "progress", "what", what, "done", done));
    }
  }
}
