package org.siltbench.balance.learn;

/** What was done at the balance while lines were captured. */
public enum Situation {
  /** Not told. */
  UNKNOWN("whatever lies there"),
  /** Nothing on the pan, at rest. */
  EMPTY("the empty pan"),
  /** Something on the pan, at rest. */
  LOAD("something on the pan, left alone"),
  /** A hand waving over the pan, or a load going on. */
  MOVING("a hand waving over the pan"),
  /** More on the pan than it can weigh. */
  OVER("more than the balance can weigh");

  private final String words;

  Situation(String words) {
    this.words = words;
  }

  /** What to show the balance, in words. */
  public String words() {
    return words;
  }
}
