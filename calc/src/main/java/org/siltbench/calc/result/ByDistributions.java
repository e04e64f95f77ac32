package org.siltbench.calc.result;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.montecarlo.Input;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.montecarlo.Model;
import org.siltbench.calc.montecarlo.Propagation;

/** Propagates distributions where the first order is not valid (JCGM 101:2008). */
final class ByDistributions {

  private static final Model MODEL =
      (in, out, from, count) -> {
        for (int i = 0; i < count; i++) {
          out[from + i] = in[0][i] / in[1][i] + in[2][i];
        }
      };

  private @Nullable Propagation propagation;

  /** The symmetric-probability interval of C = residue/volume + sub-sampling, 100 000 trials. */
  Interval interval(Concentration c, long seed) {
    if (propagation == null) {
      propagation = new Propagation(Propagation.USUAL_TRIALS);
    }
    List<Input> inputs =
        List.of(
            Input.normal(c.mgPerL() * c.litres(), c.residueU()),
            Input.normal(c.litres(), c.volumeU() / 1000),
            Input.normal(0, c.subsamplingU()));
    return propagation.run(inputs, MODEL, seed).symmetric(c.probability());
  }

  /** A seed of the row's own, so that no result depends on the order of rows (FNV-1a, 64 bit). */
  static long seed(String name) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < name.length(); i++) {
      hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
    }
    return hash;
  }
}
