package org.siltbench.demo.storm;

/** Which filters had something go wrong on purpose. */
public final class Faults {

  String lost = "";
  String torn = "";
  String slow = "";
  String damp = "";
  String clogged = "";

  Faults() {}

  /** The bag that never returns. */
  public String lost() {
    return lost;
  }

  /** The filter that tore and lost a piece. */
  public String torn() {
    return torn;
  }

  /** The filter that needs two more dryings than the others. */
  public String slow() {
    return slow;
  }

  /** The filter that is brought to the balance while it takes up moisture. */
  public String damp() {
    return damp;
  }

  /** The sample that went over two filters. */
  public String clogged() {
    return clogged;
  }
}
