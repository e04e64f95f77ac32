package org.siltbench.station.work.weigh;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.StableMass;
import org.siltbench.calc.quantity.Mass;

/**
 * A mass as it goes into the ledger, whatever its way here.
 *
 * @param grams the mass in grams, with the displayed digits; less the logged zero only where that
 *     is more than one displayed step
 * @param shownGrams what the display showed, in grams, where {@code grams} differs from it; else
 *     null
 * @param unit the displayed unit
 * @param uGrams standard uncertainty from the accepted stretch and the resolution, g; null if
 *     unknown
 * @param resolutionGrams the smallest displayed step, g; null if unknown
 * @param stable what the detector saw; null if the mass did not come over a link
 * @param zeroGrams the zero logged before it, g; null if unknown
 * @param balance which balance
 * @param format the line format; null without a link
 * @param keyed typed in by a person
 * @param pressed told by two presses of the balance's key, not watched
 * @param statedAt the time a person stated, where it was not observed
 */
public record Measured(
    String grams,
    @Nullable String shownGrams,
    String unit,
    @Nullable String uGrams,
    @Nullable String resolutionGrams,
    @Nullable StableMass stable,
    @Nullable String zeroGrams,
    String balance,
    @Nullable String format,
    boolean keyed,
    boolean pressed,
    @Nullable OffsetDateTime statedAt) {

  private static final double SQRT_12 = Math.sqrt(12);

  /** A mass seen on the balance. */
  public static Measured observed(PanOutcome.Stable seen, String balance, String format) {
    StableMass stable = seen.stable();
    double u =
        Math.hypot(stable.standardUncertaintyMg(), stable.resolution().milligrams() / SQRT_12);
    String shown = Grams.ofDisplay(stable.digits(), stable.unit());
    boolean corrected = seen.zero().abs().compareTo(stable.resolution()) > 0;
    return new Measured(
        corrected ? less(shown, seen.zero()) : shown,
        corrected ? shown : null,
        stable.unit(),
        Grams.ofMilligrams(u),
        stable.resolution().toGrams(),
        stable,
        seen.zero().toGrams(),
        balance,
        format,
        false,
        seen.pressed(),
        null);
  }

  /** A mass typed in from a display, in grams. */
  public static Measured keyed(String grams, String balance, @Nullable OffsetDateTime statedAt) {
    int places = Math.max(0, new BigDecimal(grams).scale());
    double d = Math.pow(10, 3 - places);
    return new Measured(
        grams,
        null,
        "g",
        Grams.ofMilligrams(d / SQRT_12),
        null,
        null,
        null,
        balance,
        null,
        true,
        false,
        statedAt);
  }

  private static String less(String shown, Mass zero) {
    BigDecimal displayed = new BigDecimal(shown);
    return displayed
        .subtract(BigDecimal.valueOf(zero.nanograms(), 9))
        .setScale(displayed.scale(), RoundingMode.HALF_EVEN)
        .toPlainString();
  }

  /** The mass, exact. */
  public Mass mass() {
    return Mass.ofGrams(grams);
  }

  /** Adds the fields of a weighing's record that come from the measurement. */
  public void putInto(Map<String, @Nullable Object> data) {
    data.put("mass_g", grams);
    putIfKnown(data, "shown_g", shownGrams);
    data.put("unit", unit);
    putIfKnown(data, "u_g", uGrams);
    putIfKnown(data, "resolution_g", resolutionGrams);
    StableMass seen = stable;
    if (pressed) {
      data.put("stability", "two presses");
    } else if (seen != null) {
      data.put("drift_mg_min", Grams.decimal(seen.driftMgPerMin()));
      data.put("moisture_mg", Grams.decimal(seen.moistureMg()));
    }
    data.put("balance", balance);
    putIfKnown(data, "format", format);
    putIfKnown(data, "zero_g", zeroGrams);
    if (seen != null) {
      data.put("raw", evidence(seen));
    }
    data.put("keyed", keyed);
    data.put("observed", !keyed && statedAt == null);
    OffsetDateTime stated = statedAt;
    putIfKnown(
        data,
        "stated_at",
        stated == null ? null : stated.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
  }

  private static List<String> evidence(StableMass seen) {
    return Evidence.of(seen.evidence());
  }

  private static void putIfKnown(
      Map<String, @Nullable Object> data, String field, @Nullable String value) {
    if (value != null) {
      data.put(field, value);
    }
  }
}
