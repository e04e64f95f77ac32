package org.siltbench.demo.bench.stability;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import org.siltbench.balance.Reading;
import org.siltbench.balance.stable.HandsFreePan;
import org.siltbench.balance.stable.PanCycle;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.balance.stable.PanSettings;
import org.siltbench.balance.stable.StabilitySettings;
import org.siltbench.calc.quantity.Mass;

/** The bench's own pan cycle and detector, fed with readings as they come from a line format. */
final class OurPan implements Watcher {

  private static final long ORIGIN_NANOS = 1_000_000_000_000L;
  private static final Instant START = Instant.parse("2026-11-03T08:00:00Z");

  @Override
  public String toString() {
    return "siltbench";
  }

  @Override
  public Outcome watch(Stream s) {
    PanCycle pan = new HandsFreePan(settings(s.placement().divisionMg()));
    Placement.Slow slow = s.placement().slow();
    if (slow.uptake() != 0 && slow.outTold()) {
      pan.outOfDesiccatorSince(nanos(-slow.out()));
    }
    double provisional = Double.POSITIVE_INFINITY;
    for (int i = 0; i < s.time().length; i++) {
      for (PanEvent event : pan.accept(reading(s, i))) {
        if (event instanceof PanEvent.Provisional) {
          provisional = s.time()[i];
        } else if (event instanceof PanEvent.Withdrawn) {
          provisional = Double.POSITIVE_INFINITY;
        } else if (event instanceof PanEvent.Accepted a) {
          double recorded = a.stable().mass().milligrams() / s.placement().divisionMg();
          double shown = Math.min(provisional, s.time()[i]);
          return new Outcome(shown, s.time()[i], recorded, i - s.touch() + 1);
        } else if (event instanceof PanEvent.Refused) {
          return Outcome.NEVER;
        }
      }
    }
    return Outcome.NEVER;
  }

  private static PanSettings settings(double divisionMg) {
    return new PanSettings(
        StabilitySettings.usual(),
        new PanSettings.Window(Mass.ofMilligrams("15"), Mass.ofGrams("3")),
        Mass.ofMilligrams(Math.max(0.5, 15 * divisionMg)),
        PanSettings.Dish.NONE,
        Duration.ofSeconds(125));
  }

  private static long nanos(double t) {
    return ORIGIN_NANOS + Math.round(t * 1e9);
  }

  private static Reading reading(Stream s, int i) {
    int places = places(s.placement().divisionMg());
    long step = Math.round(s.placement().divisionMg() * 1e6);
    Reading.Mark mark =
        !s.placement().output().marks()
            ? Reading.Mark.NONE
            : s.marked()[i] ? Reading.Mark.STABLE : Reading.Mark.MOVING;
    String digits = BigDecimal.valueOf(s.shown()[i], places).toPlainString();
    long nanos = nanos(s.time()[i]);
    Mass mass = new Mass(s.shown()[i] * step);
    return new Reading(Reading.Kind.MASS, mass, digits, "g", mark, digits, nanos, START);
  }

  private static int places(double divisionMg) {
    return (int) Math.round(3 - Math.log10(divisionMg));
  }
}
