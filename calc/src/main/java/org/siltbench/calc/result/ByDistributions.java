package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.montecarlo.Input;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.montecarlo.Model;
import org.siltbench.calc.montecarlo.Propagation;
import org.siltbench.calc.montecarlo.Spread;

/** Propagates distributions where the first order is not valid (JCGM 101:2008). */
final class ByDistributions {

  private @Nullable Propagation propagation;

  /**
   * The probabilistically symmetric interval of C = (residue + Σ mass causes)/(volume + Σ volume
   * causes) + sub-sampling, 100 000 trials, each cause with its own shape.
   */
  Interval interval(Concentration c, long seed) {
    if (propagation == null) {
      propagation = new Propagation(Propagation.USUAL_TRIALS);
    }
    List<Input> residue = new ArrayList<>(List.of(Input.normal(c.mgPerL() * c.litres(), 0)));
    List<Input> volume = new ArrayList<>(List.of(Input.normal(c.litres() * 1000, 0)));
    List<Input> concentration = new ArrayList<>(List.of(Input.normal(0, 0)));
    for (Cause cause : Cause.values()) {
      if (c.u(cause) > 0) {
        List<Input> rest = cause.isVolume() ? volume : concentration;
        (cause.isMass() ? residue : rest).add(new Input(0, shape(c, cause)));
      }
    }
    Model model = new Ratio(residue.size(), volume.size());
    residue.addAll(volume);
    residue.addAll(concentration);
    return propagation.run(residue, model, seed).symmetric(c.probability());
  }

  /**
   * Student's t for what was observed a few times; triangular for what is flat in each of two
   * weighings (resolution, linearity, place on the pan); else normal.
   */
  private static Spread shape(Concentration c, Cause cause) {
    double u = c.u(cause);
    double dof = c.dof(cause);
    if (!Double.isInfinite(dof)) {
      return new Spread.Student(u, Math.max(1, dof));
    }
    return switch (cause) {
      case RESOLUTION, LINEARITY, ECCENTRICITY -> new Spread.Triangular(u * Math.sqrt(6));
      default -> new Spread.Normal(u);
    };
  }

  /** Columns of the residue in mg, then of the volume in mL, then what adds to the result. */
  private record Ratio(int residueParts, int volumeParts) implements Model {

    @Override
    public void evaluate(double[][] in, double[] out, int from, int count) {
      int first = residueParts + volumeParts;
      for (int i = 0; i < count; i++) {
        double mg = sum(in, 0, residueParts, i);
        double ml = sum(in, residueParts, first, i);
        out[from + i] = 1000 * mg / ml + sum(in, first, in.length, i);
      }
    }

    private static double sum(double[][] in, int from, int to, int trial) {
      double sum = in[from][trial];
      for (int j = from + 1; j < to; j++) {
        sum += in[j][trial];
      }
      return sum;
    }
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
