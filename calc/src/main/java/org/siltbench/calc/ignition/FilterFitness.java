package org.siltbench.calc.ignition;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
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
    GLASS_FIBRE("glass-fibre", false),
    /** Quartz fibre. */
    QUARTZ_FIBRE("quartz-fibre", false),
    /** Glass fibre with an organic binder, which burns off. */
    BOUND_GLASS_FIBRE("bound-glass-fibre", true),
    /** Paper, cellulose nitrate or acetate. */
    CELLULOSE("cellulose", true),
    /** Any plastic membrane: polycarbonate, nylon, PTFE and the like. */
    MEMBRANE("membrane", true);

    private final String word;
    private final boolean burns;

    Material(String word, boolean burns) {
      this.word = word;
      this.burns = burns;
    }

    /** The stable word. */
    public String word() {
      return word;
    }

    /** All words, for messages. */
    public static String words() {
      return Arrays.stream(values()).map(Material::word).collect(Collectors.joining(", "));
    }

    /** The material of a word, whatever its case; null for an unknown one. */
    public static @Nullable Material of(String word) {
      for (Material material : values()) {
        if (material.word.equalsIgnoreCase(word.strip())) {
          return material;
        }
      }
      return null;
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
