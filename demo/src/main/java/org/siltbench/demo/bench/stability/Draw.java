package org.siltbench.demo.bench.stability;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** Draws placements from a seed; the same seed and number give the same placement. */
final class Draw {

  private static final double[] DIVISIONS_MG = {1, 0.1, 0.01, 0.001};
  private static final int[] FAST = {5, 8, 10, 15, 20};
  private static final int[] SLOW = {1, 2, 3};
  private static final double SLOW_SHARE = 0.15;
  private static final double MIXED_SHARE = 0.15;
  private static final List<Placement.Case> CASES = List.of(Placement.Case.values());
  private static final Set<Placement.Case> NOISE_ALONE =
      EnumSet.of(Placement.Case.CALM, Placement.Case.DRAUGHTY, Placement.Case.VIBRATING);
  private static final double HORIZON_S = 60;

  private final UniformRandomProvider rng;

  private Draw(UniformRandomProvider rng) {
    this.rng = rng;
  }

  /** Placement number {@code index} of a run. */
  static Placement of(long seed, long index) {
    long mixed = mix(seed * 0x9E3779B97F4A7C15L + mix(index));
    return new Draw(RandomSource.XO_RO_SHI_RO_128_PP.create(mixed)).placement(mix(mixed + 1));
  }

  private static long mix(long z) {
    long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
    return b ^ (b >>> 31);
  }

  private Placement placement(long noiseSeed) {
    Placement.Case kind = CASES.get(rng.nextInt(CASES.size()));
    double division = DIVISIONS_MG[rng.nextInt(DIVISIONS_MG.length)];
    return new Placement(
        kind,
        division,
        logUniform(20, 2000) / division,
        new Placement.Response(uniform(0.2, 1.5), rng.nextBoolean()),
        placing(),
        noise(kind),
        slow(kind, division),
        output(),
        noiseSeed);
  }

  private Placement.Placing placing() {
    int touches = 1 + rng.nextInt(3);
    double placed = uniform(0.3, 2.5);
    double[] begins = new double[touches];
    double[] offsets = new double[touches];
    for (int i = 0; i < touches; i++) {
      begins[i] = placed * i / touches;
      offsets[i] = uniform(-5000, 5000);
    }
    return new Placement.Placing(begins, offsets, placed);
  }

  private Placement.Noise noise(Placement.Case kind) {
    boolean alone = NOISE_ALONE.contains(kind);
    boolean draughty = kind == Placement.Case.DRAUGHTY || (!alone && chance(MIXED_SHARE));
    boolean shaken = kind == Placement.Case.VIBRATING || (!alone && chance(MIXED_SHARE));
    return new Placement.Noise(
        uniform(0.1, 1.5),
        draughty ? logUniform(1, 10) : 0,
        uniform(0.5, 3),
        draughty && chance(0.3) ? times(1 + rng.nextInt(4)) : new double[0],
        uniform(2, 4),
        shaken ? logUniform(0.5, 5) : 0,
        logUniform(0.3, 12),
        uniform(0, 2 * Math.PI),
        uniform(0, 0.02));
  }

  private Placement.Slow slow(Placement.Case kind, double division) {
    boolean charged = kind == Placement.Case.STATIC;
    double stat = charged ? logUniform(2, 100) * (rng.nextBoolean() ? 1 : -1) : 0;
    double[] jumpAt = charged ? times(rng.nextInt(4)) : new double[0];
    double[] jumps = new double[jumpAt.length];
    for (int i = 0; i < jumps.length; i++) {
      jumps[i] = stat * uniform(-0.6, 0.6);
    }
    double tau = uniform(180, 1200);
    double rate = kind == Placement.Case.MOISTURE ? logUniform(0.02, 1) / 60 / division : 0;
    return new Placement.Slow(
        kind == Placement.Case.CREEPING ? uniform(-1.5, 1.5) : 0,
        kind == Placement.Case.WARM ? logUniform(5, 200) : 0,
        logUniform(20, 180),
        stat,
        logUniform(30, 300),
        jumpAt,
        jumps,
        rate * tau,
        tau,
        uniform(3, 30),
        rng.nextBoolean());
  }

  private Placement.Output output() {
    int[] rates = chance(SLOW_SHARE) ? SLOW : FAST;
    int rate = rates[rng.nextInt(rates.length)];
    int averaged = rng.nextBoolean() ? 1 : 1 + (int) Math.round(rate * uniform(0, 0.6));
    double[] spreads = {1, 2, 4};
    return new Placement.Output(
        rate,
        uniform(0, 0.3),
        averaged,
        chance(0.9),
        uniform(0.3, 1.5),
        spreads[rng.nextInt(spreads.length)]);
  }

  private double[] times(int n) {
    double[] at = new double[n];
    for (int i = 0; i < n; i++) {
      at[i] = uniform(2, HORIZON_S);
    }
    return at;
  }

  private boolean chance(double share) {
    return rng.nextDouble() < share;
  }

  private double uniform(double from, double to) {
    return from + (to - from) * rng.nextDouble();
  }

  private double logUniform(double from, double to) {
    return from * Math.exp(Math.log(to / from) * rng.nextDouble());
  }
}
