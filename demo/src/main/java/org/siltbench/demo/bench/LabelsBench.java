package org.siltbench.demo.bench;

import org.siltbench.demo.bench.labels.LabelsMeasure;

/** {@code demo/bench labels}: what a label costs beside the mere drawing of its parts. */
public final class LabelsBench {

  private LabelsBench() {}

  /** Prints one JSON document. */
  public static void main(String[] args) throws Exception {
    System.out.println(LabelsMeasure.run());
  }
}
