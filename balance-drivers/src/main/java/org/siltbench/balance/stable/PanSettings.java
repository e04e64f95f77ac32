package org.siltbench.balance.stable;

import java.time.Duration;
import org.siltbench.calc.quantity.Mass;

/**
 * How one pan is used.
 *
 * @param stability what the method asks of a stable mass
 * @param window the plausible net mass of one filter; anything else is no filter, or two
 * @param zeroLimit farthest the empty pan may rest off zero and still be corrected by calculation
 * @param dish whether the filter lies in a dish
 * @param timeOut longest a load may take to settle
 */
public record PanSettings(
    StabilitySettings stability, Window window, Mass zeroLimit, Dish dish, Duration timeOut) {

  /** Whether a vessel or weighing dish is part of the weighing. */
  public enum Dish {
    /** The filter lies on the bare pan. */
    NONE,
    /** One dish stays on the pan; the filters come and go. Tared or not. */
    STAYS,
    /** Each filter comes with its own dish, which is weighed first. */
    EACH
  }

  /** The plausible net mass of one filter, both ends included. */
  public record Window(Mass least, Mass most) {
    /** Refuses an empty window and one that takes the empty pan for a filter. */
    public Window {
      if (least.nanograms() <= 0 || most.compareTo(least) < 0) {
        throw new IllegalArgumentException("window of " + least + " to " + most);
      }
    }

    boolean holds(Mass net) {
      return net.compareTo(least) >= 0 && net.compareTo(most) <= 0;
    }
  }

  /** Refuses a limit below zero and a time-out of nothing. */
  public PanSettings {
    if (zeroLimit.isNegative()) {
      throw new IllegalArgumentException("zero limit: " + zeroLimit);
    }
    if (timeOut.isNegative() || timeOut.isZero()) {
      throw new IllegalArgumentException("time-out: " + timeOut);
    }
  }

  /** Bare pan, 2 mg to 2 g, zero within 0.5 mg, two minutes. */
  public static PanSettings usual() {
    return new PanSettings(
        StabilitySettings.usual(),
        new Window(Mass.ofMilligrams("2"), Mass.ofGrams("2")),
        Mass.ofMilligrams("0.5"),
        Dish.NONE,
        Duration.ofMinutes(2));
  }

  /** The same with another window. */
  public PanSettings withWindow(Mass least, Mass most) {
    return new PanSettings(stability, new Window(least, most), zeroLimit, dish, timeOut);
  }

  /** The same with another use of a dish. */
  public PanSettings withDish(Dish other) {
    return new PanSettings(stability, window, zeroLimit, other, timeOut);
  }

  /** The same for another method. */
  public PanSettings withStability(StabilitySettings other) {
    return new PanSettings(other, window, zeroLimit, dish, timeOut);
  }
}
