package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.FilterFitness;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.SampleRule;
import org.siltbench.calc.quantity.Volume;

/** What makes a row impossible to calculate. */
final class RowCheck {

  private RowCheck() {}

  static List<RowFault> faults(InputRow row, Method method) {
    if (isSound(row, method.sample())) {
      return List.of();
    }
    List<RowFault> faults = new ArrayList<>();
    if (row.filter().isBlank()) {
      faults.add(new RowFault(row.line(), "filter", "", "the name of the filter"));
    }
    if (row.pre() == null) {
      faults.add(new RowFault(row.line(), "pre_g", "", "the pre-weigh mass in g, as 0.11234"));
    }
    if (row.posts().isEmpty()) {
      String expected = "a post-weigh mass in g, here or in post1_g, post2_g, …";
      faults.add(new RowFault(row.line(), "post_g", "", expected));
    }
    volume(faults, row, method.sample());
    RowExtras extras = row.extras();
    if (extras != null) {
      extras(faults, row, extras);
    }
    return faults;
  }

  /** The common case, without a list. */
  private static boolean isSound(InputRow row, SampleRule rule) {
    Volume volume = row.volume();
    Double u = row.volumeU();
    return row.extras() == null
        && row.pre() != null
        && !row.posts().isEmpty()
        && !row.filter().isBlank()
        && (volume == null || !isWrong(volume, row.role(), rule))
        && (u == null || !isWrong(u, volume));
  }

  private static void volume(List<RowFault> faults, InputRow row, SampleRule rule) {
    Volume volume = row.volume();
    if (volume != null && isWrong(volume, row.role(), rule)) {
      String expected =
          "a volume in mL from "
              + rule.minVolume().toMillilitres()
              + " to "
              + rule.maxVolume().toMillilitres()
              + ", or nothing where it is not known";
      faults.add(new RowFault(row.line(), "volume_ml", volume.toMillilitres(), expected));
    }
    Double u = row.volumeU();
    if (u != null && isWrong(u, volume)) {
      String expected = "a standard uncertainty in mL, zero or above and below the volume";
      faults.add(new RowFault(row.line(), "volume_u_ml", u.toString(), expected));
    }
  }

  /** A dry blank may say zero; nothing else may. */
  private static boolean isWrong(Volume volume, RowRole role, SampleRule rule) {
    boolean dry = role == RowRole.TRIP_BLANK || role == RowRole.CONTROL;
    if (dry && volume.nanolitres() == 0) {
      return false;
    }
    return volume.compareTo(rule.minVolume()) < 0 || volume.compareTo(rule.maxVolume()) > 0;
  }

  private static boolean isWrong(double u, @Nullable Volume volume) {
    boolean sound = u >= 0 && Double.isFinite(u);
    return !sound || (volume != null && volume.isPositive() && u >= volume.millilitres());
  }

  private static void extras(List<RowFault> faults, InputRow row, RowExtras extras) {
    if (extras.isSand() && (row.volume() != null || extras.mixture() != null)) {
      String expected = "nothing for sand: the volume of the sample stands with its fines";
      faults.add(new RowFault(row.line(), "volume_ml", "a volume", expected));
    }
    if (extras.mixture() != null) {
      mixture(faults, row, extras);
    }
    if (extras.ignited() != null) {
      fitness(faults, row, extras);
    }
  }

  private static void mixture(List<RowFault> faults, InputRow row, RowExtras extras) {
    if (row.volume() != null) {
      String expected = "either volume_ml or mixture_g, not both";
      faults.add(new RowFault(row.line(), "mixture_g", "both", expected));
    }
    if (!EffectiveVolume.isHeavyEnough(row, extras)) {
      String expected = "the mass of water and sediment in g, above that of the sediment";
      faults.add(new RowFault(row.line(), "mixture_g", "too little", expected));
    }
  }

  /** Refuses what burns, and what was not in the furnace before; what is not said is flagged. */
  private static void fitness(List<RowFault> faults, InputRow row, RowExtras extras) {
    FilterFitness.Material made = extras.material();
    Double celsius = extras.muffledCelsius();
    FilterFitness.Answer answer =
        FilterFitness.judge(
            made == null ? FilterFitness.Material.GLASS_FIBRE : made,
            celsius == null || celsius > 0,
            celsius == null ? FilterFitness.IGNITION_CELSIUS : celsius);
    String found = made == null ? "no material" : made.word();
    switch (answer) {
      case FIT -> {}
      case COMBUSTIBLE ->
          faults.add(
              new RowFault(
                  row.line(), "material", found, "a filter that does not burn; do not ignite it"));
      case NOT_MUFFLED, MUFFLED_TOO_COLD ->
          faults.add(
              new RowFault(
                  row.line(),
                  "muffled_c",
                  String.valueOf(celsius),
                  "a filter heated to 500 °C at least before its pre-weigh, else its own loss"
                      + " counts as volatile"));
    }
  }
}
