package org.siltbench.calc.ignition;

import org.siltbench.calc.stats.Checked;

/** Whether a filter may be ignited: it must not burn, and must have been in the furnace before. */
public final class FilterFitness {

  /** Ignition temperature, °C: 550 ± 50 (SM 2540 E). */
  public static final double IGNITION_CELSIUS = 550;

  /** How far the temperatures may be off, °C. */
  public static final double TOLERANCE_CELSIUS = 50;

  private FilterFitness() {}

  /** What a filter is made of. */
  public enum Material {
    /** Glass fibre without organic binder. */
    GLASS_FIBRE(false),
    /** Quartz fibre. */
    QUARTZ_FIBRE(false),
    /** Glass fibre with an organic binder, which burns off. */
    BOUND_GLASS_FIBRE(true),
    /** Paper, cellulose nitrate or acetate. */
    CELLULOSE(true),
    /** Any plastic membrane: polycarbonate, nylon, PTFE and the like. */
    MEMBRANE(true);

    private final boolean burns;

    Material(boolean burns) {
      this.burns = burns;
    }
  }

  /** The answer. */
  public enum Answer {
    /** May be ignited. */
    FIT,
    /** Burns, melts or gives off gas: never into a furnace. */
    COMBUSTIBLE,
    /** Was not heated before the pre-weigh: its own loss would count as volatile solids. */
    NOT_MUFFLED,
    /** Was heated, but not at the temperature it is to be ignited at. */
    MUFFLED_TOO_COLD
  }

  /**
   * Judges a filter. The furnace, its ventilation and gloves and tongs are a matter of local rules.
   *
   * @param material what it is made of
   * @param muffled whether it was heated before the pre-weigh
   * @param muffleCelsius at what temperature; looked at only if muffled
   * @throws IllegalArgumentException if muffled at a temperature that is not a finite number
   */
  public static Answer judge(Material material, boolean muffled, double muffleCelsius) {
    if (material.burns) {
      return Answer.COMBUSTIBLE;
    }
    if (!muffled) {
      return Answer.NOT_MUFFLED;
    }
    Checked.finite(muffleCelsius, "muffle temperature in °C");
    return muffleCelsius < IGNITION_CELSIUS - TOLERANCE_CELSIUS
        ? Answer.MUFFLED_TOO_COLD
        : Answer.FIT;
  }
}
