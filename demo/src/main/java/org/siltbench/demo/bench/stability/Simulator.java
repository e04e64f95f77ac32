package org.siltbench.demo.bench.stability;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/** Plays a placement: from what was drawn to what the balance sends. */
final class Simulator {

  private static final double EMPTY_S = 6;
  private static final double LENGTH_S = 145;
  private static final double NOISE_SPAN_S = 60;
  private static final double BURST_S = 2;

  private final Placement p;
  private final UniformRandomProvider rng;
  private final ZigguratSampler.NormalizedGaussian gauss;
  private final double[] time;
  private final double[] carrier;
  private final double[] lag;
  private final double[] noise;

  private Simulator(Placement p) {
    this.p = p;
    this.rng = RandomSource.XO_RO_SHI_RO_128_PP.create(p.noiseSeed());
    this.gauss = ZigguratSampler.NormalizedGaussian.of(rng);
    int n = (int) ((EMPTY_S + LENGTH_S) * p.output().rate());
    time = new double[n];
    carrier = new double[n];
    lag = new double[n];
    noise = new double[n];
  }

  static Stream play(Placement placement) {
    return new Simulator(placement).play();
  }

  private Stream play() {
    clock();
    carry();
    disturb();
    average(carrier);
    average(lag);
    average(noise);
    int touch = firstAtOrAfter(0);
    double truth = p.load();
    double sigma = sigma(touch);
    double tolerance = Math.max(Math.max(1, 2 * sigma), 0.1 / p.divisionMg());
    Truths truths = new Truths(p, time, carrier, lag, truth, tolerance, touch, sigma);
    double oracle = truths.oracle();
    long[] shown = show();
    return new Stream(
        p,
        time,
        carrier,
        shown,
        marks(shown),
        sigma,
        truth,
        tolerance,
        touch,
        oracle,
        truths.hidden());
  }

  /** Arrival times: regular, with jitter, never turned round. */
  private void clock() {
    double step = 1.0 / p.output().rate();
    double offset = rng.nextDouble() * step;
    for (int i = 0; i < time.length; i++) {
      double jitter = p.output().jitter() * step * (rng.nextDouble() - 0.5);
      time[i] = -EMPTY_S + offset + i * step + jitter;
    }
  }

  /** The lagged load, the slow parts and the wandering zero. */
  private void carry() {
    double inner = 0;
    double outer = 0;
    double zero = 0;
    double now = time[0];
    for (int i = 0; i < time.length; i++) {
      while (now < time[i]) {
        double next = Math.min(time[i], nextChange(now));
        double level = loadAt(now);
        double k = Math.exp(-(next - now) / p.response().tau());
        if (p.response().secondOrder()) {
          double away = inner - level;
          double x = (next - now) / p.response().tau();
          outer = level + k * (outer - level + x * away);
          inner = level + k * away;
        } else {
          outer = level + k * (outer - level);
        }
        now = next;
      }
      double dt = i == 0 ? 0 : time[i] - time[i - 1];
      zero += p.noise().zeroWalk() * Math.sqrt(dt) * (time[i] < 0 ? 0 : gauss.sample());
      lag[i] = outer - p.load();
      carrier[i] = outer + zero + (time[i] < 0 ? 0 : p.slow().at(time[i]));
    }
  }

  private double nextChange(double t) {
    if (t < 0) {
      return 0;
    }
    for (double begin : p.placing().begins()) {
      if (begin > t) {
        return begin;
      }
    }
    return t < p.placing().placedAt() ? p.placing().placedAt() : Double.POSITIVE_INFINITY;
  }

  private double loadAt(double t) {
    if (t < 0) {
      return 0;
    }
    double level = p.load();
    if (t < p.placing().placedAt()) {
      for (int i = 0; i < p.placing().begins().length; i++) {
        level = t >= p.placing().begins()[i] ? p.load() + p.placing().offsets()[i] : level;
      }
    }
    return level;
  }

  private void disturb() {
    Placement.Noise n = p.noise();
    double draught = n.draught() * gauss.sample();
    for (int i = 0; i < time.length; i++) {
      double dt = i == 0 ? 0 : time[i] - time[i - 1];
      if (n.draught() > 0) {
        double keep = Math.exp(-dt / n.draughtTime());
        draught = keep * draught + n.draught() * Math.sqrt(1 - keep * keep) * gauss.sample();
      }
      double sine = n.vibration() * Math.sin(2 * Math.PI * n.hertz() * time[i] + n.phase());
      noise[i] = n.white() * gauss.sample() + draught * burst(time[i]) + sine;
    }
  }

  private double burst(double t) {
    double factor = 1;
    for (double at : p.noise().burstAt()) {
      double in = (t - at) / BURST_S;
      factor += in > 0 && in < 1 ? (p.noise().burstFactor() - 1) * Math.sin(Math.PI * in) : 0;
    }
    return factor;
  }

  private void average(double[] values) {
    int k = p.output().averaged();
    if (k == 1) {
      return;
    }
    double[] raw = values.clone();
    double sum = 0;
    for (int i = 0; i < raw.length; i++) {
      sum += raw[i] - (i >= k ? raw[i - k] : 0);
      values[i] = sum / Math.min(k, i + 1);
    }
  }

  private double sigma(int touch) {
    double sum = 0;
    int n = 0;
    for (int i = touch; i < time.length && time[i] < NOISE_SPAN_S; i++) {
      sum += noise[i] * noise[i];
      n++;
    }
    return Math.sqrt(sum / n);
  }

  private int firstAtOrAfter(double t) {
    int i = Arrays.binarySearch(time, t);
    return i >= 0 ? i : -i - 1;
  }

  private long[] show() {
    long[] shown = new long[time.length];
    for (int i = 0; i < time.length; i++) {
      shown[i] = Math.round(carrier[i] + noise[i]);
    }
    return shown;
  }

  /** The balance's own opinion: the newest readings lie within its spread, however short. */
  private boolean[] marks(long[] shown) {
    boolean[] marks = new boolean[shown.length];
    int span = (int) Math.max(1, Math.round(p.output().markSpan() * p.output().rate()));
    for (int i = span; i < shown.length && p.output().marks(); i++) {
      long least = shown[i];
      long most = shown[i];
      for (int k = i - span; k < i; k++) {
        least = Math.min(least, shown[k]);
        most = Math.max(most, shown[k]);
      }
      marks[i] = most - least <= p.output().markSpread();
    }
    return marks;
  }
}
