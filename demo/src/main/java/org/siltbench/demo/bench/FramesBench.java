package org.siltbench.demo.bench;

import org.siltbench.demo.bench.window.FramesMeasure;

/** {@code demo/bench frames}: the time between frames while masses are recorded, in real time. */
public final class FramesBench {

  private FramesBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(FramesMeasure.run(args));
  }
}
