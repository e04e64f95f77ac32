package org.siltbench.demo.bench;

import org.siltbench.demo.bench.ledger.ShareMeasure;

/** {@code demo/bench share}: many benches and a PostgreSQL server that is running. */
public final class ShareBench {

  private ShareBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(ShareMeasure.run(args));
  }
}
