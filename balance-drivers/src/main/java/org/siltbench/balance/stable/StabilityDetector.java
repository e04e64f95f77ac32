package org.siltbench.balance.stable;

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
  private static final double LEAST_WATCH_S = 6;
  private static final int LEAST_BLOCKS = 6;
  private static final double ACCEPTED = 5e-6;
  private static final double LONGEST_WATCH_S = 90;
  private static final double SHORTENED_S = 10;
  private static final double MASKED = 1e-5;
  private static final double MASKED_HALF = 0.01;
  private static final double DOUBTED = 0.2;
  private static final double SUSPECTED = 0.1;
  private static final double CONTRADICTED = 0.002;
  private static final double CONTRADICTING_DOUBT = 0.5;
  private static final double MOST_NOISE = 50;
  private static final double PATIENT_S = 9;
  private static final double UPTAKE_POSSIBLE = 0.1;
  private static final double UPTAKE_LIKELY = 0.5;

  private final StabilitySettings settings;
  private final Resolution resolution;
  private final Evidence evidence;
  private final Blocks blocks = new Blocks();
  private final Stretch stretch = new Stretch(blocks);
  private final Idle idle = new Idle();
  private final Judge judge = new Judge(idle);
  private final Judge second = new Judge(idle);
  private final Glance glance = new Glance();
  private final Standstill standstill = new Standstill();
  private final Marks marks = new Marks();
  private long outSince = Long.MIN_VALUE;
  private int untilJudged;
  private double last = Double.NaN;
  private double rested = Double.NaN;
  private @Nullable Verdict moving;
  private Verdict verdict = new Verdict.Settling();

  /** A detector that has seen nothing yet. */
  public StabilityDetector(StabilitySettings settings) {
    this.settings = settings;
    this.resolution = new Resolution(settings.resolution().nanograms());
    this.evidence = new Evidence(resolution);
  }

  /** The pan is empty and at rest: all its display does now is noise, and is remembered as such. */
  void empty(Reading reading) {
    Mass mass = reading.mass();
    if (mass == null) {
      idle.clear();
    } else {
      idle.add(reading.nanos(), mass.nanograms());
    }
  }

  /** What the display shows is neither an empty pan at rest nor a load. */
  void unknown() {
    idle.clear();
  }

  /** Something new lies on the pan from now on. */
  public void load() {
    idle.close();
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
    judge.clear();
    glance.clear();
    standstill.clear();
    marks.clear();
    evidence.clear();
    untilJudged = 0;
    last = Double.NaN;
    rested = Double.NaN;
    moving = null;
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
    verdict = resolution.nanograms() == 0 ? verdict : take(reading);
    return verdict;
  }

  private static PanSays words(Reading.Kind kind) {
    return switch (kind) {
      case OVER -> PanSays.OVER;
      case UNDER -> PanSays.UNDER;
      case FAULT -> PanSays.FAULT;
      case MASS -> PanSays.MASS;
    };
  }

  private Verdict take(Reading reading) {
    if (evidence.seconds(reading.nanos()) - last > GAP_S) {
      clear();
    }
    if (evidence.isEmpty()) {
      idle.sum((double) resolution.nanograms());
      glance.expect(idle.reading());
    }
    evidence.add(reading);
    double t = evidence.seconds(reading.nanos());
    last = Double.isNaN(last) ? t : Math.max(t, last);
    double x = evidence.divisions(reading.mass());
    marks.take(reading.mark());
    glance.add(last, x);
    standstill.add(last, x);
    return blocks.add(last, x) ? watch() : glimpse();
  }

  private Verdict watch() {
    if (--untilJudged > 0) {
      return glimpse();
    }
    Verdict still = standstill.longEnough() ? standing() : null;
    return still == null ? judged() : still;
  }

  /** The display has stood still for a watch: nothing that a watch can tell from rest goes on. */
  private @Nullable Verdict standing() {
    int from = blocks.since(standstill.since());
    second.clear();
    Opinion still = second.judge(blocks, from, Settling.NONE, frame(), standstill.value());
    boolean sure = still.doubtful() < DOUBTED && !marks.speakAgainst();
    return sure ? stable(still) : null;
  }

  private Verdict judged() {
    int from = notTooLong(stretch.start(tolerance()));
    if (!longEnough(from)) {
      return jumped(from)
          ? new Verdict.Disturbed("the value jumped after it had come to rest")
          : glimpse();
    }
    rested = blocks.time(from);
    Settling settling = from == stretch.begin() ? stretch.settling() : Settling.NONE;
    Opinion opinion = judge.judge(blocks, from, settling, frame());
    int settled = judge.settled();
    if (settled == from) {
      return verdict(opinion, from, settling);
    }
    return longEnough(settled)
        ? verdict(judge.judge(blocks, settled, Settling.NONE, frame()), settled, Settling.NONE)
        : glimpse();
  }

  private Verdict verdict(Opinion opinion, int from, Settling settling) {
    untilJudged = patience(opinion);
    if (moves(opinion)) {
      moving = last - rested < PATIENT_S ? null : moving(opinion, gainMg(opinion));
      return glimpse();
    }
    moving = null;
    boolean sure = rests(opinion) && confirmed(from, opinion) && unmasked(from, settling);
    Verdict stable = sure ? stable(opinion) : null;
    return stable == null ? glimpse() : stable;
  }

  private boolean moves(Opinion opinion) {
    return gainMg(opinion) > settings.moistureAllowance().milligrams() || opinion.drifts();
  }

  /** What lay long ago says little of now: a long watch loses its beginning, some at a time. */
  private int notTooLong(int from) {
    int newest = blocks.size() - 1;
    if (from > newest || last - blocks.time(from) < LONGEST_WATCH_S) {
      return from;
    }
    double begin = Math.ceil((last - LONGEST_WATCH_S) / SHORTENED_S) * SHORTENED_S;
    return Math.max(from, Math.min(newest, blocks.since(begin)));
  }

  private boolean rests(Opinion opinion) {
    boolean sure = opinion.wrong() < ACCEPTED && opinion.doubtful() < DOUBTED;
    return sure && opinion.reading() < MOST_NOISE && !marks.speakAgainst();
  }

  /**
   * Its newest quarter and half must not speak against the whole watch: a jump may hide a drift.
   */
  private boolean confirmed(int from, Opinion opinion) {
    int quarter = blocks.size() - (blocks.size() - from) / 4;
    if (longEnough(quarter) && newest(quarter, opinion).wrong() > SUSPECTED) {
      return false;
    }
    int half = Math.min(from + (blocks.size() - from) / 2, blocks.size() - LEAST_BLOCKS);
    Opinion newer = newest(half, opinion);
    boolean contradicts = newer.wrong() > CONTRADICTED || newer.doubtful() > CONTRADICTING_DOUBT;
    return !contradicts && second.masked(blocks, half, Settling.NONE) < MASKED_HALF;
  }

  private Opinion newest(int from, Opinion opinion) {
    second.clear();
    return second.judge(blocks, from, Settling.NONE, frame(), opinion.recorded());
  }

  /** Nor must a jump, or a slow settling, hide a drift from both. */
  private boolean unmasked(int from, Settling settling) {
    return judge.masked(blocks, from, settling) < MASKED;
  }

  /** Blocks until it is worth looking again: the farther from acceptable, the more. */
  private int patience(Opinion opinion) {
    double far = Math.log10(Math.max(opinion.wrong(), ACCEPTED) / ACCEPTED);
    double longer = Math.min(4, (last - rested) / 16);
    return 1 + (int) (far / 2) + (int) longer;
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
    if (moving != null) {
      return moving;
    }
    if (verdict instanceof Verdict.Provisional p) {
      boolean holds = glance.holds(evidence.divisions(p.mass()), tolerance());
      return holds ? p : new Verdict.Settling();
    }
    boolean calm = glance.calm(tolerance());
    if (calm && !(verdict instanceof Verdict.Stable)) {
      Reading newest = evidence.newest();
      return new Verdict.Provisional(Objects.requireNonNull(newest.mass()), newest.digits());
    }
    return calm ? verdict : new Verdict.Settling();
  }

  private Verdict moving(Opinion opinion, double gain) {
    double rate = opinion.slope() * divisionMg() * 60;
    boolean upwards = opinion.slope() > 3 * opinion.slopeError();
    if (!upwards || opinion.uptake() < UPTAKE_LIKELY) {
      return new Verdict.Drifting(rate);
    }
    double exit = evidence.milligrams(opinion.recorded()) - gain;
    boolean allowed = gain <= settings.moistureAllowance().milligrams();
    return new Verdict.TakingUp(rate, gain, allowed, exit);
  }

  /** Rate times time out of the desiccator where a gain shows at all. */
  private double gainMg(Opinion opinion) {
    boolean shows = opinion.slope() > 2.5 * opinion.slopeError();
    boolean possible = shows && opinion.uptake() > UPTAKE_POSSIBLE;
    return possible ? opinion.slope() * divisionMg() * (last - outAt()) : 0;
  }

  private Frame frame() {
    boolean told = outSince != Long.MIN_VALUE;
    return new Frame(tolerance(), divisionMg(), told ? outAt() : Double.NaN);
  }

  private double outAt() {
    return outSince == Long.MIN_VALUE ? 0 : Math.min(0, evidence.seconds(outSince));
  }

  private double tolerance() {
    return settings.tolerance().nanograms() / (double) resolution.nanograms();
  }

  private double divisionMg() {
    return resolution.nanograms() / 1e6;
  }

  /** The verdict, or null where the value to be recorded was never shown: wait until it is. */
  private Verdict.@Nullable Stable stable(Opinion opinion) {
    List<Reading> accepted = evidence.since(blocks.time(opinion.from()) - Blocks.SPAN_S);
    Reading shown = evidence.showing(accepted, opinion.recorded());
    return shown == null
        ? null
        : new Verdict.Stable(
            new StableMass(
                Objects.requireNonNull(shown.mass()),
                shown.digits(),
                shown.unit(),
                new Mass(resolution.nanograms()),
                opinion.meanError() * divisionMg(),
                opinion.slope() * divisionMg() * 60,
                gainMg(opinion),
                accepted));
  }
}
