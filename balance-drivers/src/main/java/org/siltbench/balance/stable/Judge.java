package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Weighs the ways a display may still be moving against rest, under every kind of noise, and says
 * how likely the value to be recorded is off the truth by more than the tolerance. Bayesian model
 * averaging over generalised least squares; docs/stability.md gives the reasoning and the sources.
 */
final class Judge {

  private static final double NEGLIGIBLE = 3e-8;
  private static final double FAR = 1e-3;
  private static final double CLEAR = 4;
  private static final double FOCUS = 40;
  private static final double FOCUS_BELOW = 12;
  private static final int FOCUS_STEPS = 5;
  private static final double SUNK = 0.1;

  private final Idle idle;
  private final Fits wide = new Fits(Shape.ALL);
  private final Masks masks;
  private final int kinds = Kind.ALL.size();
  private final int line = Shape.ALL.size() - 1;
  private final double[] driftVariance = new double[kinds];
  private final double[] weight = new double[kinds];
  private Fits near = wide;
  private int nearTo;
  private boolean focused;
  private int settled;
  private double spacing;
  private double top;
  private @Nullable Odds latest;

  Judge(Idle idle) {
    this.idle = idle;
    masks = new Masks(idle, wide);
  }

  void clear() {
    wide.bank.clear();
    near = wide;
    spacing = 0;
  }

  /** Judges blocks {@code from} to the newest, and the value they would have recorded. */
  Opinion judge(Blocks blocks, int from, Settling settling, Frame frame) {
    return judge(blocks, from, settling, frame, Double.NaN);
  }

  /** The same for a value to be recorded. */
  Opinion judge(Blocks blocks, int from, Settling settling, Frame frame, double recorded) {
    space(blocks, from);
    wide.fit(blocks, from, settling, driftVariance, idle);
    top = wide.top;
    focus(blocks, from, settling);
    int kind = weighKinds();
    int shape = moving(kind);
    settled = settled(blocks, from, kind, shape);
    int newest = blocks.size() - Math.max(4, (blocks.size() - from) / 4);
    int begin = shape < 0 ? Math.min(newest, sunk(blocks, from, settling)) : newest;
    double shown = shape < 0 ? wide.level[kind] : wide.value(kind, shape);
    return weigh(kind, begin, Double.isNaN(recorded) ? Math.rint(shown) : recorded, frame);
  }

  private void space(Blocks blocks, int from) {
    int last = blocks.size() - 1;
    double seen = (blocks.time(last) - blocks.time(from)) / (last - from);
    if (Math.abs(seen - spacing) > 0.2 * spacing) {
      spacing = seen;
      for (int k = 0; k < kinds; k++) {
        driftVariance[k] = Kind.ALL.get(k).driftVariance(spacing);
      }
    }
  }

  /**
   * Where an exponential is seen clearly, its time constant is sought between those of the bank.
   */
  private void focus(Blocks blocks, int from, Settling settling) {
    int kind = 0;
    int best = 0;
    for (int k = 0; k < kinds; k++) {
      for (int s = 0; s < line; s++) {
        boolean better = wide.logShape[k][s] > wide.logShape[kind][best];
        if (better && wide.shapes.get(s) instanceof Shape.Decay) {
          kind = k;
          best = s;
        }
      }
    }
    double size = wide.left[kind][best];
    boolean clear = size * size > FOCUS * wide.leftVariance[kind][best];
    focused = clear && wide.logShape[kind][best] > top - FOCUS_BELOW;
    if (focused) {
      lookNear(best);
      near.fit(blocks, from, settling, driftVariance, idle);
      top = Math.max(top, near.top);
    }
  }

  private void lookNear(int centre) {
    if (near != wide && nearTo == centre) {
      return;
    }
    Shape.Decay decay = (Shape.Decay) wide.shapes.get(centre);
    double width = decay.width() / (FOCUS_STEPS + 1);
    List<Shape> shapes = new ArrayList<>();
    for (int j = -FOCUS_STEPS; j <= FOCUS_STEPS; j++) {
      shapes.add(new Shape.Decay(decay.tau() * Math.exp(j * width), width));
    }
    near = new Fits(shapes);
    nearTo = centre;
  }

  /** The likeliest kind of noise; the weights of all are left in {@code weight}. */
  private int weighKinds() {
    int first = 0;
    for (int k = 0; k < kinds; k++) {
      double best = focused ? Math.max(wide.best(k), near.best(k)) : wide.best(k);
      weight[k] = Math.exp(best - top);
      first = weight[k] > weight[first] ? k : first;
    }
    return first;
  }

  /** The shape that a kind of noise lets see clearly, or -1: then all readings count alike. */
  private int moving(int kind) {
    int best = 0;
    for (int s = 1; s <= line; s++) {
      best = wide.logShape[kind][s] > wide.logShape[kind][best] ? s : best;
    }
    return wide.logShape[kind][best] > wide.logRest[kind] + CLEAR ? best : -1;
  }

  /** First block in which the tail of the settling has sunk below a tenth of a division. */
  private static int sunk(Blocks blocks, int from, Settling settling) {
    double lasts = settling.tau() * Math.log(Math.max(1, settling.size() / SUNK));
    int at = from;
    while (at < blocks.size() && blocks.time(at) < blocks.time(from) + lasts) {
      at++;
    }
    return at;
  }

  /** First block in which a quick exponential that is seen clearly has sunk as far. */
  private int settled(Blocks blocks, int from, int kind, int shape) {
    if (shape < 0 || !(wide.shapes.get(shape) instanceof Shape.Decay decay) || !decay.isQuick()) {
      return from;
    }
    double size = Math.abs(wide.left[kind][shape]);
    return sunk(blocks, from, new Settling(size, decay.tau()));
  }

  /**
   * First block of the watch judged last in which a settling slower than usual has died down; what
   * was judged before it says little of a slow drift.
   */
  int settled() {
    return settled;
  }

  private Opinion weigh(int first, int begin, double recorded, Frame frame) {
    Odds odds = new Odds(frame, recorded, wide, top);
    Means means = new Means();
    add(odds, means, first);
    double all = 0;
    for (double w : weight) {
      all += w;
    }
    // Far from a record, the likeliest kind of noise tells enough.
    boolean close = odds.wrong() * weight[first] / all < FAR;
    for (int k = 0; close && k < kinds; k++) {
      if (k != first && weight[k] > NEGLIGIBLE) {
        add(odds, means, k);
      }
    }
    latest = odds;
    return means.opinion(odds, begin, recorded);
  }

  /** Probability that the value judged last is wrong behind a mask; for the same watch. */
  double masked(Blocks blocks, int from, Settling settling) {
    return masks.wrong(blocks, from, settling, weight, Objects.requireNonNull(latest));
  }

  private void add(Odds odds, Means means, int k) {
    means.add(weight[k], k);
    double before = odds.total();
    odds.rest(wide, k);
    for (int s = 0; s <= line; s++) {
      if (!focused || s != nearTo) {
        odds.shape(wide, k, s);
      }
    }
    for (int s = 0; focused && s < near.now.length; s++) {
      odds.shape(near, k, s);
    }
    if (wide.strange[k]) {
      odds.mistrust(before);
    }
  }

  /** Averages over kinds of noise. */
  private final class Means {
    private double weights;
    private double slope;
    private double slopeVariance;
    private double levelVariance;
    private double reading;

    void add(double w, int k) {
      weights += w;
      slope += w * wide.left[k][line];
      slopeVariance += w * wide.leftVariance[k][line];
      levelVariance += w * wide.levelVariance[k];
      reading += w * wide.noise[k];
    }

    Opinion opinion(Odds odds, int begin, double recorded) {
      return new Opinion(
          recorded,
          begin,
          Math.sqrt(levelVariance / weights),
          slope / weights,
          Math.sqrt(slopeVariance / weights),
          odds.wrong(),
          odds.doubtful(),
          odds.uptake(),
          reading / weights);
    }
  }
}
