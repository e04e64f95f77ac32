package org.siltbench.balance.stable;

import java.util.ArrayList;
import java.util.List;
import org.siltbench.balance.Reading;
import org.siltbench.balance.StableMass;
import org.siltbench.balance.stable.PanSettings.Dish;
import org.siltbench.calc.quantity.Mass;

/**
 * The pan cycle that needs no key: it sees the load come and go. A load is weighed only between two
 * sights of the empty pan, so that no mass is told twice or stands for two filters.
 */
public final class HandsFreePan implements PanCycle {

  private static final double MOISTURE_S = 20;

  private enum Step {
    SEEKING_EMPTY,
    READY,
    WEIGHING_DISH,
    DISH_WEIGHED,
    WEIGHING,
    DONE
  }

  private final PanSettings settings;
  private final StabilityDetector detector;
  private final ZeroWatch zero;
  private final Speech speech = new Speech();
  private Step step = Step.SEEKING_EMPTY;
  private Mass under = Mass.ZERO;
  private long loadedAt;
  private long moistSince = Long.MIN_VALUE;
  private boolean outOfRange;
  private List<PanEvent> out = new ArrayList<>();

  /** A pan of which nothing is known yet. */
  public HandsFreePan(PanSettings settings) {
    this.settings = settings;
    this.detector = new StabilityDetector(settings.stability());
    this.zero = new ZeroWatch(settings);
  }

  @Override
  public void outOfDesiccatorSince(long nanos) {
    detector.outOfDesiccatorSince(nanos);
  }

  @Override
  public List<PanEvent> linkLost() {
    out = new ArrayList<>();
    speech.withdraw("the link to the balance was lost", out);
    detector.linkLost();
    zero.interrupted();
    return out;
  }

  @Override
  public List<PanEvent> accept(Reading reading) {
    out = new ArrayList<>();
    Mass mass = reading.mass();
    if (mass == null) {
      noMass(reading);
    } else {
      outOfRange = false;
      take(reading, mass);
    }
    return out;
  }

  private void noMass(Reading reading) {
    Verdict verdict = detector.accept(reading);
    zero.interrupted();
    speech.withdraw("the balance shows no mass", out);
    if (!outOfRange && verdict instanceof Verdict.OutOfRange o) {
      out.add(new PanEvent.OutOfRange(o.why()));
    }
    outOfRange = true;
  }

  private void take(Reading reading, Mass mass) {
    switch (step) {
      case SEEKING_EMPTY -> seekEmpty(reading);
      case READY -> awaitLoad(reading, mass, zero.level());
      case DISH_WEIGHED -> awaitFilter(reading, mass);
      case WEIGHING_DISH, WEIGHING -> weigh(reading, mass);
      case DONE -> awaitUnload(reading, mass);
    }
  }

  private void seekEmpty(Reading reading) {
    zero.add(reading);
    if (zero.atRest()) {
      detector.empty(reading);
      Mass off = zero.offset();
      if (!zero.within(off)) {
        complain(off);
      } else if (zero.settled()) {
        zero.settle(reading.nanos());
        step = Step.READY;
        out.add(new PanEvent.Ready(zero.level()));
      }
    } else {
      detector.unknown();
    }
  }

  private void complain(Mass off) {
    if (zero.newComplaint(off)) {
      out.add(new PanEvent.Rezero(off));
    }
  }

  private void awaitLoad(Reading reading, Mass mass, Mass level) {
    if (mass.minus(level).abs().compareTo(zero.threshold()) > 0) {
      under = zero.levelBefore(reading.nanos());
      begin(reading, settings.dish() == Dish.EACH ? Step.WEIGHING_DISH : Step.WEIGHING);
      return;
    }
    zero.add(reading);
    detector.empty(reading);
    if (zero.strays(reading)) {
      step = Step.SEEKING_EMPTY;
      complain(zero.offset());
    } else if (zero.settled() && zero.within(zero.offset())) {
      zero.settle(reading.nanos());
    }
  }

  private void awaitFilter(Reading reading, Mass mass) {
    if (zero.isOff(reading, mass)) {
      unloaded();
    } else if (mass.minus(under).compareTo(zero.threshold()) > 0) {
      begin(reading, Step.WEIGHING);
    }
  }

  private void begin(Reading reading, Step next) {
    step = next;
    loadedAt = reading.nanos();
    moistSince = Long.MIN_VALUE;
    zero.interrupted();
    speech.restart();
    detector.load();
    detector.accept(reading);
    out.add(new PanEvent.Settling());
  }

  private void weigh(Reading reading, Mass mass) {
    if (zero.isOff(reading, mass)) {
      speech.withdraw("the load was taken off", out);
      unloaded();
      return;
    }
    Verdict verdict = detector.accept(reading);
    if (verdict instanceof Verdict.Stable s) {
      stable(s.mass());
    } else {
      speech.say(verdict, out);
      judgeTime(reading, verdict);
    }
  }

  private void stable(StableMass mass) {
    speech.restart();
    if (step == Step.WEIGHING_DISH) {
      under = mass.mass();
      step = Step.DISH_WEIGHED;
      out.add(new PanEvent.DishWeighed(mass));
      return;
    }
    Mass net = mass.mass().minus(under);
    if (settings.window().holds(net)) {
      step = Step.DONE;
      out.add(new PanEvent.Accepted(mass, under));
    } else {
      refuse(PanEvent.Reason.OUTSIDE_WINDOW, PanWords.outside(net, settings.window()));
    }
  }

  private void judgeTime(Reading reading, Verdict verdict) {
    boolean moist = verdict instanceof Verdict.TakingUp up && !up.allowed();
    moistSince = moist ? Math.max(moistSince, firstMoist(reading)) : Long.MIN_VALUE;
    boolean moistForLong = moist && reading.nanos() - moistSince > MOISTURE_S * 1e9;
    boolean timeOut = reading.nanos() - loadedAt > settings.timeOut().toNanos();
    if (moistForLong || timeOut) {
      giveUp(verdict);
    }
  }

  private long firstMoist(Reading reading) {
    return moistSince == Long.MIN_VALUE ? reading.nanos() : moistSince;
  }

  private void giveUp(Verdict verdict) {
    if (verdict instanceof Verdict.TakingUp up) {
      Mass allowance = settings.stability().moistureAllowance();
      refuse(PanEvent.Reason.MOISTURE, PanWords.moisture(up, allowance));
    } else if (verdict instanceof Verdict.Drifting drift) {
      refuse(PanEvent.Reason.DRIFT, PanWords.drift(drift));
    } else if (verdict instanceof Verdict.Disturbed) {
      refuse(PanEvent.Reason.DISTURBED, PanWords.disturbed());
    } else {
      refuse(PanEvent.Reason.TIMEOUT, PanWords.timeOut(settings.timeOut().toSeconds()));
    }
  }

  private void refuse(PanEvent.Reason reason, String why) {
    speech.withdraw(why, out);
    step = Step.DONE;
    out.add(new PanEvent.Refused(reason, why));
  }

  private void awaitUnload(Reading reading, Mass mass) {
    if (zero.isOff(reading, mass)) {
      unloaded();
    }
  }

  private void unloaded() {
    step = Step.SEEKING_EMPTY;
    zero.interrupted();
    out.add(new PanEvent.Unloaded());
  }
}
