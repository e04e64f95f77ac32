package org.siltbench.balance.stable;

import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.stable.PanSettings.Dish;
import org.siltbench.calc.quantity.Mass;

/** Knows what the display shows without a filter, and when a load has gone. */
final class ZeroWatch {

  private static final double OFF_S = 0.6;
  private static final int OFF_READINGS = 3;
  private static final int NOISE_DIVISIONS = 30;

  private final PanSettings settings;
  private final Level display;
  private @Nullable Mass dish;
  private @Nullable Mass complained;
  private Mass level = Mass.ZERO;
  private long offSince;
  private int offReadings;

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

  /** Takes the level now shown as what lies under the next filter. */
  void settle() {
    level = display.shown();
    complained = null;
    dish = dish == null || within(level) ? level : dish;
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

  /** True once the display has been back at the empty pan for a while. */
  boolean isOff(Reading reading, Mass mass) {
    if (mass.minus(level).abs().compareTo(threshold()) > 0) {
      offReadings = 0;
      return false;
    }
    offSince = offReadings == 0 ? reading.nanos() : offSince;
    offReadings++;
    return offReadings >= OFF_READINGS && reading.nanos() - offSince >= OFF_S * 1e9;
  }
}
