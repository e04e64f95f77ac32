package org.siltbench.demo.bench;

import org.siltbench.demo.bench.stability.StabilityMeasure;

/** {@code demo/bench stability}: how soon and how rightly a mass is called stable. */
public final class StabilityBench {

  private StabilityBench() {}

  /** Prints one JSON document with {@code --json}, else a table. */
  public static void main(String[] args) throws Exception {
    System.out.println(StabilityMeasure.run(args));
  }
}
