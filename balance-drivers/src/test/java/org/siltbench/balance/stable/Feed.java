package org.siltbench.balance.stable;

import java.time.Instant;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/** Feeds a detector with readings made from a carrier in divisions and white noise. */
final class Feed {

  final StabilityDetector detector;
  private final RandomGenerator random;
  private final long divisionNanograms;
  private final double rate;
  private final double noise;
  private double time = 50;
  Verdict last = new Verdict.Settling();
  boolean everStable;

  Feed(StabilitySettings settings, long seed, long divisionNanograms, double rate, double noise) {
    this.detector = new StabilityDetector(settings);
    this.random = new SplittableRandom(seed);
    this.divisionNanograms = divisionNanograms;
    this.rate = rate;
    this.noise = noise;
    detector.load();
  }

  /** Divisions of 0.01 mg, ten readings a second, 0.6 d of noise. */
  static Feed usual(long seed) {
    return new Feed(StabilitySettings.usual(), seed, 10_000, 10, 0.6);
  }

  double now() {
    return time;
  }

  Feed pause(double seconds) {
    time += seconds;
    return this;
  }

  /** Until stable, at most so long; the time it took. */
  double untilStable(double most, DoubleUnaryOperator carrier) {
    double begin = time;
    while (time - begin < most && !(last instanceof Verdict.Stable)) {
      one(carrier.applyAsDouble(time - begin), Reading.Mark.NONE);
    }
    return time - begin;
  }

  Feed play(double seconds, DoubleUnaryOperator carrier) {
    return play(seconds, carrier, Reading.Mark.NONE);
  }

  Feed play(double seconds, DoubleUnaryOperator carrier, Reading.Mark mark) {
    double begin = time;
    while (time - begin < seconds) {
      one(carrier.applyAsDouble(time - begin), mark);
    }
    return this;
  }

  private void one(double carrier, Reading.Mark mark) {
    long shown = Math.round(carrier + noise * random.nextGaussian());
    take(reading(shown, places(), mark));
    time += 1 / rate * (0.85 + 0.3 * random.nextDouble());
  }

  void take(Reading reading) {
    last = detector.accept(reading);
    everStable |= last instanceof Verdict.Stable;
  }

  int places() {
    return 9 - (int) Math.floor(Math.log10(divisionNanograms));
  }

  Reading reading(long divisions, int places, Reading.Mark mark) {
    Mass mass = new Mass(divisions * divisionNanograms);
    String digits = mass.toGrams(places);
    long nanos = Math.round(time * 1e9);
    return new Reading(Reading.Kind.MASS, mass, digits, "g", mark, digits, nanos, Instant.EPOCH);
  }

  Reading other(Reading.Kind kind) {
    long nanos = Math.round(time * 1e9);
    return new Reading(kind, null, "", "", Reading.Mark.NONE, "-", nanos, Instant.EPOCH);
  }
}
