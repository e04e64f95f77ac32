package org.siltbench.demo.bench;

import java.io.IOException;
import org.siltbench.demo.bench.calc.CalcMeasure;

/** {@code demo/bench calc}: results per second with their uncertainty, against plain loops. */
public final class CalcBench {

  private CalcBench() {}

  /** Prints one JSON document with {@code --json}, else a table. */
  public static void main(String[] args) throws IOException {
    System.out.println(CalcMeasure.run(args));
  }
}
