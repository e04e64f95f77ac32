package org.siltbench.demo.bench.calc;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.siltbench.calc.montecarlo.ConcentrationModel;
import org.siltbench.calc.montecarlo.Input;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.montecarlo.Outcome;
import org.siltbench.calc.montecarlo.Propagation;

/** One concentration with eight parts by distributions: the library and a plain loop. */
final class Trials {

  private static final List<Input> INPUTS =
      List.of(
          Input.normal(128.91, 0.08),
          Input.normal(-112.34, 0.08),
          Input.normal(-0.2, 0.05),
          Input.triangular(0, 0.1),
          Input.rectangular(0, 0.1),
          Input.normal(500, 1),
          Input.normal(0, 2),
          Input.rectangular(0, 2.5));
  private static final ConcentrationModel MODEL = new ConcentrationModel(5, 3);

  private final Propagation propagation;
  private final double[] outputs;

  Trials(int trials) {
    propagation = new Propagation(trials);
    outputs = new double[trials];
  }

  /** Mean and standard uncertainty. */
  double library(long seed) {
    Outcome outcome = propagation.run(INPUTS, MODEL, seed);
    return outcome.mean() + outcome.standardUncertainty();
  }

  /** Mean, standard uncertainty and the 95 % interval. */
  double libraryWithInterval(long seed) {
    Outcome outcome = propagation.run(INPUTS, MODEL, seed);
    Interval interval = outcome.symmetric(0.95);
    return outcome.mean() + outcome.standardUncertainty() + interval.low() + interval.high();
  }

  double plain(long seed) {
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    ContinuousSampler normal = ZigguratSampler.NormalizedGaussian.of(random);
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < outputs.length; i++) {
      double mg = 128.91 + 0.08 * normal.sample();
      mg += -112.34 + 0.08 * normal.sample();
      mg += -0.2 + 0.05 * normal.sample();
      mg += 0.1 * ((random.nextDouble() - 0.5) + (random.nextDouble() - 0.5));
      mg += 0.1 * (2 * random.nextDouble() - 1);
      double ml = 500 + normal.sample();
      ml += 2 * normal.sample();
      ml += 2.5 * (2 * random.nextDouble() - 1);
      double c = 1000 * mg / ml;
      outputs[i] = c;
      sum += c;
      squares += (c - 32.74) * (c - 32.74);
    }
    return sum / outputs.length + Math.sqrt(squares / outputs.length);
  }

  double plainWithInterval(long seed) {
    double keep = plain(seed);
    Arrays.sort(outputs);
    int outside = (int) (0.025 * outputs.length);
    return keep + outputs[outside] + outputs[outputs.length - 1 - outside];
  }
}
