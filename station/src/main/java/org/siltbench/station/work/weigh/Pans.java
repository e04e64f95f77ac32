package org.siltbench.station.work.weigh;

import org.siltbench.balance.stable.PanSettings;
import org.siltbench.balance.stable.StabilitySettings;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.quantity.Mass;

/** How the pan is watched for a method's filters, and for check weights. */
public final class Pans {

  private static final Mass LEAST = Mass.ofMilligrams("2");
  private static final Mass MOST = Mass.ofGrams("2");

  private Pans() {}

  /** For filters under a method. */
  public static PanSettings filters(Method method) {
    StabilitySettings usual = StabilitySettings.usual();
    return PanSettings.usual()
        .withStability(
            new StabilitySettings(
                usual.tolerance(), method.balance().moistureAllowance(), usual.resolution()))
        .withWindow(LEAST, MOST);
  }

  /** The same where a check weight comes on the pan between the filters. */
  public static PanSettings with(PanSettings filters, Mass weight) {
    return filters.withWindow(
        min(filters.window().least(), half(weight)), max(filters.window().most(), twice(weight)));
  }

  /** For one check weight alone. */
  public static PanSettings weight(Mass weight) {
    return PanSettings.usual().withWindow(half(weight), twice(weight));
  }

  private static Mass half(Mass mass) {
    return new Mass(mass.nanograms() / 2);
  }

  private static Mass twice(Mass mass) {
    return new Mass(Math.multiplyExact(mass.nanograms(), 2L));
  }

  private static Mass min(Mass a, Mass b) {
    return a.compareTo(b) <= 0 ? a : b;
  }

  private static Mass max(Mass a, Mass b) {
    return a.compareTo(b) >= 0 ? a : b;
  }
}
