package org.siltbench.station.window.desk;

import java.util.Locale;
import org.siltbench.station.Problem;

/**
 * Something the person should know, shown beside the work and never in front of it.
 *
 * @param about what it is about: a newer notice about the same replaces it
 * @param level how pressing
 * @param what what happened
 * @param safe what is safe, or empty
 * @param next what to do next, or empty
 */
public record Notice(String about, Level level, String what, String safe, String next) {

  /** How pressing; each has a colour, a shape and a word. */
  public enum Level {
    NOTE,
    WARNING,
    REFUSED,
    TROUBLE
  }

  /** Of a problem: something outside is trouble, the rest was refused. */
  public static Notice of(String about, Problem problem, Locale language) {
    Level level = problem instanceof Problem.Outside ? Level.TROUBLE : Level.REFUSED;
    return new Notice(
        about, level, problem.what(language), problem.safe(language), problem.next(language));
  }

  /** A note. */
  public static Notice note(String about, String what) {
    return new Notice(about, Level.NOTE, what, "", "");
  }

  /** A warning. */
  public static Notice warning(String about, String what, String next) {
    return new Notice(about, Level.WARNING, what, "", next);
  }
}
