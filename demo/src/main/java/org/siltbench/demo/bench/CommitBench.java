package org.siltbench.demo.bench;

import org.siltbench.demo.bench.ledger.CommitMeasure;

/**
 * {@code demo/bench commit}: from an accepted mass to forced on disk, against a bare append and
 * force.
 */
public final class CommitBench {

  private CommitBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(CommitMeasure.run(args));
  }
}
