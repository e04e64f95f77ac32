package org.siltbench.demo.coverage;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.siltbench.balance.Balances;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.practice.Load;
import org.siltbench.balance.practice.PracticeSetup;
import org.siltbench.balance.practice.PracticeSource;
import org.siltbench.balance.stable.HandsFreePan;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.UncertaintyInputs;
import org.siltbench.calc.montecarlo.Input;
import org.siltbench.calc.montecarlo.Interval;
import org.siltbench.calc.montecarlo.Model;
import org.siltbench.calc.montecarlo.Propagation;
import org.siltbench.calc.quantity.Mass;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.result.BatchCalculation;
import org.siltbench.calc.result.Concentration;
import org.siltbench.calc.result.InputRow;
import org.siltbench.calc.result.ResultRow;
import org.siltbench.calc.result.RowRole;
import org.siltbench.demo.storm.VolumeErrors;
import org.siltbench.station.work.weigh.Measured;
import org.siltbench.station.work.weigh.PanLoad;
import org.siltbench.station.work.weigh.PanOutcome;
import org.siltbench.station.work.weigh.PanWatch;
import org.siltbench.station.work.weigh.Pans;
import org.siltbench.station.work.weigh.Patience;
import org.siltbench.station.work.weigh.PracticeHand;

/**
 * Simulated samples: a bottle of known concentration, a filter weighed before and after on the
 * practice balance, a volume read with an error. All errors are drawn anew for each sample, from
 * the distributions the method states, so that samples are independent and the count is binomial.
 */
public final class CoverageRun {

  private static final int TRIALS = 10_000;
  private static final Model MODEL =
      (in, out, from, count) -> {
        for (int i = 0; i < count; i++) {
          double volume = in[2][i] * (1 + in[3][i] + in[4][i]) + in[5][i];
          out[from + i] = (in[1][i] - in[0][i]) / volume * 1000 * (1 + in[6][i]);
        }
      };

  private final Method method;
  private final UncertaintyInputs u;
  private final VolumeErrors volumes;
  private final SplittableRandom chance;
  private final Propagation propagation = new Propagation(TRIALS);
  private Load onHand = Load.of(Mass.ZERO);

  /** Samples under a method. */
  public CoverageRun(Method method, long seed) {
    this.method = method;
    this.u = method.uncertainty();
    this.volumes =
        new VolumeErrors(
            u.volumeReadingMl(),
            u.volumeCalibrationPct(),
            u.volumeTemperaturePct(),
            u.subsamplingPct());
    this.chance = new SplittableRandom(seed);
  }

  /** One sample as it was measured, and its truth. */
  private record Sample(InputRow row, double truth, double stated) {}

  /** Simulates so many samples and counts. */
  public Coverage run(int samples) throws IOException, InterruptedException {
    List<Sample> all = new ArrayList<>();
    VirtualTime time = new VirtualTime(Instant.parse("2026-10-12T06:00:00Z"));
    PracticeSource source =
        new Balances(time, Path.of("formats"))
            .practice(PracticeSetup.seeded(chance.nextLong()).on(time));
    try (PanWatch pan =
        new PanWatch(
            source,
            new HandsFreePan(Pans.filters(method)),
            Patience.USUAL,
            new PracticeHand(source.hand(), id -> onHand))) {
      for (int i = 0; i < samples; i++) {
        all.add(sample(i, pan));
      }
    }
    return count(all);
  }

  private Sample sample(int number, PanWatch pan) throws InterruptedException {
    double concentration = Math.exp(Math.log(20) + chance.nextDouble() * Math.log(40));
    double stated = concentration < 100 ? 400 : 200;
    double clean = 108 + 2.5 * chance.nextGaussian();
    double litres = volumes.trueMillilitres(stated, chance) / 1000;
    double residue = volumes.inAliquot(concentration, chance) * litres;
    InputRow row =
        InputRow.of("S" + number, RowRole.SAMPLE)
            .pre(weigh(pan, clean))
            .post(weigh(pan, clean + residue))
            .volume(Volume.ofMillilitres(stated))
            .build();
    return new Sample(row, concentration, stated);
  }

  private Mass weigh(PanWatch pan, double mg) throws InterruptedException {
    onHand = Load.of(Mass.ofMilligrams(mg + u.massMg() * chance.nextGaussian()));
    PanOutcome outcome = pan.weigh(PanLoad.OfFilter.in("filter", ""));
    if (outcome instanceof PanOutcome.Stable stable) {
      return Measured.observed(stable, "practice", pan.formatName()).mass();
    }
    throw new IllegalStateException("a calm dry filter was refused: " + outcome);
  }

  private Coverage count(List<Sample> all) {
    List<ResultRow> results = new ArrayList<>();
    new BatchCalculation(method)
        .run(rows -> all.forEach(sample -> rows.accept(sample.row())), results::add);
    int first = 0;
    int distributions = 0;
    for (int i = 0; i < all.size(); i++) {
      Sample sample = all.get(i);
      Concentration c = results.get(i).concentration();
      if (c == null) {
        throw new IllegalStateException("no concentration for " + sample);
      }
      first += Math.abs(c.mgPerL() - sample.truth()) <= c.k() * c.u() ? 1 : 0;
      distributions += interval(sample, i).holds(sample.truth()) ? 1 : 0;
    }
    return new Coverage(all.size(), first, distributions);
  }

  /** The interval by distributions, straight from the method's inputs (JCGM 101:2008). */
  private Interval interval(Sample sample, int number) {
    Mass pre = sample.row().pre();
    Mass post = sample.row().posts().get(0);
    if (pre == null) {
      throw new IllegalStateException("a sample without a clean mass");
    }
    List<Input> inputs =
        List.of(
            Input.normal(pre.milligrams(), u.massMg()),
            Input.normal(post.milligrams(), u.massMg()),
            Input.normal(sample.stated(), 0),
            Input.normal(0, u.volumeCalibrationPct() / 100),
            Input.normal(0, u.volumeTemperaturePct() / 100),
            Input.normal(0, u.volumeReadingMl()),
            Input.normal(0, u.subsamplingPct() / 100));
    return propagation.run(inputs, MODEL, number + 1L).symmetric(0.95);
  }
}
