package org.siltbench.demo.bench;

import org.siltbench.demo.bench.ledger.OpenMeasure;

/**
 * {@code demo/bench open}: making the register, opening a lab, answering a scan, by size of the
 * ledger.
 */
public final class OpenBench {

  private OpenBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(OpenMeasure.run(args));
  }
}
