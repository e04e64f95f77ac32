package org.siltbench.balance.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What a pan does when something is laid on it: the response of the balance, placing, warmth,
 * moisture, static, creep, draught, vibration and a wandering zero. All in mg and seconds; moved on
 * by the caller, never by a clock of its own.
 */
public final class PanPhysics {

  private static final double LONGEST_STEP = 0.05;
  private static final double SETTLED_AFTER = 60;
  private static final double LEAST_REACH = 1.2;

  private final Room room;
  private final RandomGenerator random;
  private final Response response;
  private final Wander draught;
  private final List<OnPan> loads = new ArrayList<>();
  private double now;
  private double zeroDrift;
  private double phase;
  private double creepSince;
  private double creepMg;
  private double disturbedFrom;
  private double disturbedUntil;
  private double disturbanceMg;
  private boolean doorOpen;

  /** An empty pan at rest, at time zero. */
  public PanPhysics(Room room, RandomGenerator random) {
    this.room = room;
    this.random = random;
    this.response = new Response(room.responseSeconds(), room.secondOrder());
    this.draught = new Wander(room.draughtSeconds(), random);
    this.phase = random.nextDouble() * 2 * Math.PI;
  }

  /** Lays a load on: the hand needs a moment to reach the pan, and the pan bounces. */
  public void put(Load load) {
    double reach = LEAST_REACH + random.nextDouble();
    double touch = now + reach;
    loads.add(new OnPan(load, touch, 0.3 + 1.2 * random.nextDouble(), 2 * random.nextDouble() - 1));
    creepSince = touch;
    creepMg = room.creepMg() * (2 * random.nextDouble() - 1);
    disturb(reach, 0.3 + 0.6 * random.nextDouble(), 50 * room.stepMg());
  }

  /** Takes everything off, now. */
  public void takeOff() {
    loads.clear();
    creepMg = 0;
    disturb(0, 0.3 + 0.6 * random.nextDouble(), 50 * room.stepMg());
  }

  /** A touch of the tweezers: a push of up to 500 steps for up to a second and a half. */
  public void touch() {
    disturb(0, 0.4 + 1.1 * random.nextDouble(), 500 * room.stepMg());
  }

  /** A door that stands open brings a draught and makes charges jump. */
  public void door(boolean open) {
    doorOpen = open;
    for (OnPan load : loads) {
      load.jump(random.nextDouble());
    }
  }

  private void disturb(double after, double seconds, double upToMg) {
    disturbedFrom = now + after;
    disturbedUntil = disturbedFrom + seconds;
    disturbanceMg = upToMg * (2 * random.nextDouble() - 1);
  }

  /** Moves time on, to a moment in seconds since the pan began. */
  public void advanceTo(double seconds) {
    double gap = seconds - now;
    if (gap > SETTLED_AFTER) {
      leap(gap);
    }
    while (now < seconds) {
      step(Math.min(LONGEST_STEP, seconds - now));
    }
  }

  /** A long time at once: what is fast is settled, what is slow goes on. */
  private void leap(double gap) {
    double leaped = gap - SETTLED_AFTER / 2;
    now += leaped;
    zeroDrift += room.zeroDriftMg() * Math.sqrt(leaped) * random.nextGaussian();
    response.settle(pull());
  }

  private void step(double dt) {
    now += dt;
    zeroDrift += room.zeroDriftMg() * Math.sqrt(dt) * random.nextGaussian();
    draught.step(dt);
    response.step(pull(), dt);
  }

  private double pull() {
    double sum = now >= disturbedFrom && now < disturbedUntil ? disturbanceMg : 0;
    for (OnPan load : loads) {
      sum += load.pull(now);
    }
    return sum;
  }

  /** What the balance would show without noise, draught and vibration: the carrier. */
  public double carrier() {
    double creep = creepMg == 0 ? 0 : creepMg * Math.log1p(Math.max(0, now - creepSince) / 5);
    return response.value() + creep + zeroDrift;
  }

  /** One inner value of the balance: the carrier with noise, draught and vibration. */
  public double sample() {
    double shake = room.vibrationMg() * Math.sin(2 * Math.PI * room.vibrationHz() * now + phase);
    double air = draught.value() * (room.draughtMg() + (doorOpen ? 20 * room.stepMg() : 0));
    return carrier() + shake + air + room.noiseMg() * random.nextGaussian();
  }

  /** What lies on the pan, as it was when it left the desiccator. */
  public double truth() {
    return loads.stream().mapToDouble(l -> l.load.mass().milligrams()).sum();
  }

  /** A load on the pan since some moment. */
  private static final class OnPan {

    private final Load load;
    private final double since;
    private final double placing;
    private final double share;
    private double chargeMg;

    OnPan(Load load, double since, double placing, double share) {
      this.load = load;
      this.since = since;
      this.placing = placing;
      this.share = share;
      this.chargeMg = load.staticMg();
    }

    void jump(double random) {
      chargeMg *= 0.5 + random;
    }

    double pull(double now) {
      double t = now - since;
      if (t < 0) {
        return 0;
      }
      double mass = load.mass().milligrams();
      double laid = t < placing ? mass * (t / placing) * (1 + 0.3 * share) : mass;
      double warm = load.warmMg() * Math.exp(-t / load.warmSeconds());
      double charge = chargeMg * Math.exp(-t / 120);
      return laid + moisture(t) - warm + charge;
    }

    /** Water taken up since the desiccator: A·(1 − exp(−t/tau)), its first rate A/tau. */
    private double moisture(double t) {
      double minutes = (t + load.outFor().toMillis() / 1000.0) / 60;
      double tau = load.moistureMinutes();
      return load.moistureMgPerMin() * tau * -Math.expm1(-minutes / tau);
    }
  }
}
