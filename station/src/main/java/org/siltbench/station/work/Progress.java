package org.siltbench.station.work;

/** How far a long piece of work is, and whether somebody wants it to stop. */
public interface Progress {

  /** Nobody watches, nobody stops it. */
  Progress UNWATCHED = (what, done, of) -> true;

  /**
   * Before each step.
   *
   * @param what the step, in a word or two
   * @param done steps done
   * @param of steps in all
   * @return false to stop here
   */
  boolean goesOn(String what, int done, int of);
}
