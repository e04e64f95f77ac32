package org.siltbench.balance.stable;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

/**
 * Says after each reading whether the balance has come to rest. Pure: no thread, no clock, no I/O;
 * time is the readings' own. Memory is bounded whatever the stream does.
 *
 * <p>Call {@link #load} when something new lies on the pan, {@link #accept} for each reading.
 */
public final class StabilityDetector {

  private static final double GAP_S = 3;
  private static final double LEAST_WATCH_S = 3;
  private static final int LEAST_BLOCKS = 6;
  private static final double ACCEPTED = 1e-4;
  private static final double MOVING = 0.3;
  private static final double MOST_NOISE = 50;

  /** Where nobody says, a filter may have been out of the desiccator this long before the pan. */
  private static final double UNTOLD_S = 30;

  private static final int EVIDENCE = 2048;

  private final StabilitySettings settings;
  private final Resolution resolution;
  private final Blocks blocks = new Blocks();
  private final Stretch stretch = new Stretch(blocks);
  private final Judge judge = new Judge();
  private final Glance glance = new Glance();
  private final Marks marks = new Marks();
  private final Deque<Reading> recent = new ArrayDeque<>();
  private long origin;
  private long outSince = Long.MIN_VALUE;
  private long anchor;
  private int untilJudged;
  private double last = Double.NaN;
  private double rested = Double.NaN;
  private Verdict verdict = new Verdict.Settling();

  /** A detector that has seen nothing yet. */
  public StabilityDetector(StabilitySettings settings) {
    this.settings = settings;
    this.resolution = new Resolution(settings.resolution().nanograms());
  }

  /** Something new lies on the pan from now on. */
  public void load() {
    clear();
    verdict = new Verdict.Settling();
  }

  /** When the filter left the desiccator, on the clock of the readings; else the load counts. */
  public void outOfDesiccatorSince(long nanos) {
    outSince = nanos;
  }

  /** The link was lost: what came before says nothing about what comes after. */
  public Verdict linkLost() {
    clear();
    verdict = new Verdict.LinkLost();
    return verdict;
  }

  private void clear() {
    blocks.clear();
    glance.clear();
    marks.clear();
    recent.clear();
    untilJudged = 0;
    last = Double.NaN;
    rested = Double.NaN;
  }

  /** Takes the next reading. */
  public Verdict accept(Reading reading) {
    Mass mass = reading.mass();
    if (mass == null) {
      clear();
      verdict = new Verdict.OutOfRange(reading.kind(), words(reading.kind()));
      return verdict;
    }
    if (resolution.changedBy(reading, mass.nanograms())) {
      clear();
    }
    verdict = resolution.nanograms() == 0 ? verdict : take(reading, mass);
    return verdict;
  }

  private static String words(Reading.Kind kind) {
    return switch (kind) {
      case OVER -> "over the balance's range";
      case UNDER -> "under the balance's range";
      case FAULT -> "the balance reports a fault";
      case MASS -> "a mass";
    };
  }

  private Verdict take(Reading reading, Mass mass) {
    double t = recent.isEmpty() ? 0 : (reading.nanos() - origin) / 1e9;
    if (t - last > GAP_S) {
      clear();
      t = 0;
    }
    if (recent.isEmpty()) {
      origin = reading.nanos();
      anchor = mass.nanograms();
    }
    t = Double.isNaN(last) ? 0 : Math.max(t, last);
    last = t;
    double x = (mass.nanograms() - anchor) / (double) resolution.nanograms();
    remember(reading);
    marks.take(reading.mark());
    glance.add(t, x);
    return blocks.add(t, x) ? watch() : glimpse();
  }

  private void remember(Reading reading) {
    if (recent.size() == EVIDENCE) {
      recent.removeFirst();
    }
    recent.addLast(reading);
  }

  private Verdict watch() {
    if (--untilJudged > 0) {
      return glimpse();
    }
    int from = Tail.end(blocks, stretch.start(tolerance()), tolerance());
    if (!longEnough(from)) {
      return jumped(from)
          ? new Verdict.Disturbed("the value jumped after it had come to rest")
          : glimpse();
    }
    rested = blocks.time(from);
    Judge.Opinion opinion = judge.judge(blocks, from, moments(), tolerance());
    if (opinion.moving() > MOVING) {
      from = Tail.end(blocks, from, 0);
      if (!longEnough(from)) {
        return glimpse();
      }
      opinion = judge.judge(blocks, from, moments(), tolerance());
    }
    untilJudged = patience(opinion);
    double gain = gainMg(opinion);
    boolean drifts = opinion.wrong() > 0.5 && Math.abs(opinion.slope()) > 4 * opinion.slopeError();
    if (gain > settings.moistureAllowance().milligrams() || drifts) {
      return moving(opinion, gain);
    }
    boolean rests = opinion.wrong() < ACCEPTED && opinion.reading() < MOST_NOISE;
    return rests && !marks.speakAgainst() ? new Verdict.Stable(stable(opinion, gain)) : glimpse();
  }

  /** Blocks until it is worth looking again: the farther from acceptable, the more. */
  private static int patience(Judge.Opinion opinion) {
    double far = Math.log10(Math.max(opinion.wrong(), ACCEPTED) / ACCEPTED);
    return 1 + (int) far;
  }

  private boolean longEnough(int from) {
    int n = blocks.size() - from;
    return n >= LEAST_BLOCKS && blocks.time(blocks.size() - 1) - blocks.time(from) >= LEAST_WATCH_S;
  }

  private boolean jumped(int from) {
    boolean was = !Double.isNaN(rested);
    boolean now = from >= blocks.size() || blocks.time(from) > rested + 1;
    return was && now;
  }

  private Verdict glimpse() {
    boolean calm = glance.calm(tolerance());
    Reading newest = Objects.requireNonNull(recent.peekLast());
    if (verdict instanceof Verdict.Provisional p) {
      double held =
          (Objects.requireNonNull(p.mass()).nanograms() - anchor) / (double) resolution.nanograms();
      return glance.holds(held, tolerance()) ? p : new Verdict.Settling();
    }
    boolean restless = verdict instanceof Verdict.Drifting || verdict instanceof Verdict.TakingUp;
    if (calm && !restless && !(verdict instanceof Verdict.Stable)) {
      return new Verdict.Provisional(Objects.requireNonNull(newest.mass()), newest.digits());
    }
    return calm || restless ? verdict : new Verdict.Settling();
  }

  private Verdict moving(Judge.Opinion opinion, double gain) {
    double rate = opinion.slope() * divisionMg() * 60;
    boolean upwards = opinion.slope() > 3 * opinion.slopeError() && opinion.uptake() > 0.1;
    if (!upwards) {
      return new Verdict.Drifting(rate);
    }
    double exit = anchor / 1e6 + opinion.mean() * divisionMg() - gain;
    boolean allowed = gain <= settings.moistureAllowance().milligrams();
    return new Verdict.TakingUp(rate, gain, allowed, exit);
  }

  /** Rate times time out of the desiccator where a gain shows at all. */
  private double gainMg(Judge.Opinion opinion) {
    boolean shows = opinion.slope() > 2.5 * opinion.slopeError();
    return shows ? opinion.slope() * divisionMg() * (last - outAt()) : 0;
  }

  private Shape.Moments moments() {
    double out = outSince == Long.MIN_VALUE ? -UNTOLD_S : outAt();
    return new Shape.Moments(out, 0, blocks.time(blocks.size() - 1));
  }

  private double outAt() {
    return outSince == Long.MIN_VALUE ? 0 : Math.min(0, (outSince - origin) / 1e9);
  }

  private double tolerance() {
    return settings.tolerance().nanograms() / (double) resolution.nanograms();
  }

  private double divisionMg() {
    return resolution.nanograms() / 1e6;
  }

  private StableMass stable(Judge.Opinion opinion, double gain) {
    List<Reading> evidence = evidence(opinion.from());
    Reading shown = nearest(evidence, opinion.mean());
    return new StableMass(
        Objects.requireNonNull(shown.mass()),
        shown.digits(),
        shown.unit(),
        new Mass(resolution.nanograms()),
        opinion.meanError() * divisionMg(),
        opinion.slope() * divisionMg() * 60,
        gain,
        evidence);
  }

  private List<Reading> evidence(double from) {
    List<Reading> out = new ArrayList<>();
    for (Reading r : recent) {
      if ((r.nanos() - origin) / 1e9 >= from - Blocks.SPAN_S) {
        out.add(r);
      }
    }
    return out;
  }

  /** The value shown that stands nearest to the mean; the newest of equals. */
  private Reading nearest(List<Reading> evidence, double mean) {
    @Nullable Reading best = null;
    double off = Double.POSITIVE_INFINITY;
    for (Reading r : evidence) {
      double x =
          (Objects.requireNonNull(r.mass()).nanograms() - anchor) / (double) resolution.nanograms();
      if (Math.abs(x - mean) <= off) {
        off = Math.abs(x - mean);
        best = r;
      }
    }
    return Objects.requireNonNull(best);
  }
}
