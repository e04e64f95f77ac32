package org.siltbench.demo.bench;

import org.siltbench.demo.bench.all.AllMeasure;

/** {@code demo/bench all}: every measure, and the page that keeps the figures. */
public final class AllBench {

  private AllBench() {}

  /** Prints the page it wrote. */
  public static void main(String[] args) throws Exception {
    System.out.println(AllMeasure.run(args));
  }
}
