package org.siltbench.demo.bench;

import org.siltbench.demo.bench.ledger.FaultsMeasure;

/** {@code demo/bench faults}: kills, faulty disks, flipped bytes, partitions, hostile input. */
public final class FaultsBench {

  private FaultsBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(FaultsMeasure.run(args));
  }
}
