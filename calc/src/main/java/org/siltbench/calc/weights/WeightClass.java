package org.siltbench.calc.weights;

/** Accuracy classes of weights after OIML R 111-1:2004, as far as an analytical bench needs. */
public enum WeightClass {
  /** Class E2. */
  E2(0),
  /** Class F1. */
  F1(1),
  /** Class F2. */
  F2(2),
  /** Class M1. */
  M1(3);

  private final int column;

  WeightClass(int column) {
    this.column = column;
  }

  /** The column in the table of limits. */
  int column() {
    return column;
  }
}
