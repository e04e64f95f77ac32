package org.siltbench.balance.stable;

import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.stable.PanSettings.Dish;
import org.siltbench.calc.quantity.Mass;

/** Knows what the display shows without a filter, and when a load has gone. */
final class ZeroWatch {

  private static final double STRAY_S = 3;
  private static final double OFF_S = 0.8;
  private static final double TOUCH_S = 3;
  private static final int OFF_READINGS = 3;
  private static final int NOISE_DIVISIONS = 30;

  private final PanSettings settings;
  private final Level display;
  private @Nullable Mass dish;
  private @Nullable Mass complained;
  private Mass level = Mass.ZERO;
  private final Deque<Settled> settled = new ArrayDeque<>();
  private Mass offLeast = Mass.ZERO;
  private Mass offMost = Mass.ZERO;
  private long offSince;
  private long straySince = Long.MAX_VALUE;
  private int offReadings;

  /** A level taken for the empty pan, and when. */
  private record Settled(long nanos, Mass level) {}

  ZeroWatch(PanSettings settings) {
    this.settings = settings;
    this.display = new Level(settings.stability().resolution());
  }

  /** Takes a reading of the pan without a filter. */
  void add(Reading reading) {
    display.add(reading);
  }

  /** The readings so far say nothing about those to come. */
  void interrupted() {
    settled.clear();
    display.clear();
    offReadings = 0;
  }

  boolean atRest() {
    return display.calm(settings.zeroLimit());
  }

  /** True if the value shown can stand for the pan without a filter. */
  boolean settled() {
    return display.settled(settings.zeroLimit());
  }

  /** How far the display is off where it should be; a dish that stays sets its own place. */
  Mass offset() {
    Mass shown = display.shown();
    Mass before = dish;
    if (settings.dish() != Dish.STAYS) {
      return shown;
    }
    return before == null || within(shown) ? Mass.ZERO : shown.minus(before);
  }

  boolean within(Mass offset) {
    return offset.abs().compareTo(settings.zeroLimit()) <= 0;
  }

  /** True once the pan has rested off zero by more than allowed for longer than a touch takes. */
  boolean strays(Reading reading) {
    if (!atRest() || within(offset())) {
      straySince = reading.nanos();
      return false;
    }
    return reading.nanos() > straySince && reading.nanos() - straySince > STRAY_S * 1e9;
  }

  /** Takes the level now shown as what lies under the next filter. */
  void settle(long nanos) {
    level = display.shown();
    settled.addLast(new Settled(nanos, level));
    forgetBefore(nanos);
    complained = null;
    dish = dish == null || within(level) ? level : dish;
  }

  /**
   * What lay on the pan before this moment's load began to touch it: a load laid down slowly rises
   * through the first few readings, and they are none of the empty pan's.
   */
  Mass levelBefore(long nanos) {
    forgetBefore(nanos);
    Settled first = settled.peekFirst();
    return first == null ? level : first.level();
  }

  /** Keeps the newest level that is old enough, and those after it. */
  private void forgetBefore(long nanos) {
    while (settled.size() > 1) {
      Settled first = settled.removeFirst();
      if (nanos - settled.getFirst().nanos() < TOUCH_S * 1e9) {
        settled.addFirst(first);
        return;
      }
    }
  }

  /** What lies under the filter. */
  Mass level() {
    return level;
  }

  /** True if the person has not been told of this offset yet. */
  boolean newComplaint(Mass offset) {
    Mass before = complained;
    complained = offset;
    return before == null || before.minus(offset).abs().compareTo(settings.zeroLimit()) > 0;
  }

  /** Less than this above the empty pan is no load. */
  Mass threshold() {
    long least = settings.window().least().nanograms();
    long noise = Math.min(least / 10 * 9, NOISE_DIVISIONS * display.division().nanograms());
    return new Mass(Math.max(least / 2, noise));
  }

  /** True once the display has rested at the empty pan for a while; passing by is not enough. */
  boolean isOff(Reading reading, Mass mass) {
    if (mass.minus(level).abs().compareTo(threshold()) > 0) {
      offReadings = 0;
      return false;
    }
    boolean begins = offReadings == 0;
    offLeast = begins || mass.compareTo(offLeast) < 0 ? mass : offLeast;
    offMost = begins || mass.compareTo(offMost) > 0 ? mass : offMost;
    if (begins || 2 * offMost.minus(offLeast).nanograms() > threshold().nanograms()) {
      offLeast = mass;
      offMost = mass;
      offSince = reading.nanos();
      offReadings = 0;
    }
    offReadings++;
    return offReadings >= OFF_READINGS && reading.nanos() - offSince >= OFF_S * 1e9;
  }
}
