package org.siltbench.demo.bench;

import org.siltbench.demo.bench.window.StartMeasure;

/**
 * {@code demo/bench start}: from process start to a live mass on screen, beside an empty window.
 */
public final class StartBench {

  private StartBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(StartMeasure.run(args));
  }
}
