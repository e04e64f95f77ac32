package org.siltbench.calc.method;

/** Whether an aliquot of a shaken bottle or the whole bottle goes through the filter. */
public enum Taken {
  ALIQUOT("aliquot"),
  WHOLE("whole");

  private final String word;

  Taken(String word) {
    this.word = word;
  }

  /** The stable word for tables and files. */
  public String word() {
    return word;
  }
}
