package org.siltbench.station.bench;

/** Hears how far long work on a lab folder is. Called often, so it is quick. */
@FunctionalInterface
public interface Count {

  /** Nobody listens. */
  Count NOBODY = (what, done) -> {};

  /**
   * On the way.
   *
   * @param what is counted, in a word or two
   * @param done how many so far
   */
  void at(String what, long done);
}
