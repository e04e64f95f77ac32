package org.siltbench.balance.stable;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import org.siltbench.balance.Reading;
import org.siltbench.calc.quantity.Mass;

/** Plays readings to a pan cycle and keeps what it says: d = 0.01 mg, ten a second, white noise. */
final class Pan {

  static final double STEP_MG = 0.01;

  final List<PanEvent> events = new ArrayList<>();
  private final PanCycle cycle;
  private final RandomGenerator random;
  private double time = 100;
  private double rate = 10;
  private double noise = 0.6;

  Pan(PanSettings settings, long seed) {
    this.cycle = new HandsFreePan(settings);
    this.random = new SplittableRandom(seed);
  }

  Pan rate(double perSecond) {
    rate = perSecond;
    return this;
  }

  Pan noise(double divisions) {
    noise = divisions;
    return this;
  }

  double now() {
    return time;
  }

  PanCycle cycle() {
    return cycle;
  }

  /** A load of so many milligrams, for so many seconds. */
  Pan show(double seconds, double milligrams) {
    return play(seconds, t -> milligrams);
  }

  /** The balance follows its new load within a second or two. */
  Pan put(double seconds, double fromMg, double toMg) {
    return play(seconds, t -> toMg + (fromMg - toMg) * Math.exp(-t / 0.4));
  }

  /** The carrier as a function of the seconds since the beginning of this piece. */
  Pan play(double seconds, DoubleUnaryOperator milligrams) {
    double begin = time;
    while (time - begin < seconds) {
      double mg = milligrams.applyAsDouble(time - begin);
      say(reading(Math.round(mg / STEP_MG + noise * random.nextGaussian())));
      time += 1 / rate * (0.85 + 0.3 * random.nextDouble());
    }
    return this;
  }

  Pan say(Reading reading) {
    events.addAll(cycle.accept(reading));
    return this;
  }

  Pan kind(Reading.Kind kind) {
    time += 1 / rate;
    return say(new Reading(kind, null, "", "", Reading.Mark.NONE, "----", nanos(), Instant.EPOCH));
  }

  Pan pause(double seconds) {
    time += seconds;
    return this;
  }

  Pan linkLost() {
    events.addAll(cycle.linkLost());
    return this;
  }

  private long nanos() {
    return Math.round(time * 1e9);
  }

  private Reading reading(long divisions) {
    Mass mass = new Mass(divisions * 10_000);
    String digits = mass.toGrams(5);
    return new Reading(
        Reading.Kind.MASS,
        mass,
        digits,
        "g",
        Reading.Mark.NONE,
        digits + " g",
        nanos(),
        Instant.EPOCH);
  }

  <T extends PanEvent> List<T> all(Class<T> kind) {
    return events.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /** What was said, in short. */
  String said() {
    return events.stream().map(e -> e.getClass().getSimpleName()).toList().toString();
  }

  int count(Class<? extends PanEvent> kind) {
    return all(kind).size();
  }
}
