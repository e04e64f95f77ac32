package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.FilterFitness;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.SampleRule;
import org.siltbench.calc.quantity.Volume;
import org.siltbench.calc.reason.Reason;

/** What makes a row impossible to calculate. */
final class RowCheck {

  private RowCheck() {}

  static List<RowFault> faults(InputRow row, Method method) {
    if (isSound(row, method.sample())) {
      return List.of();
    }
    List<RowFault> faults = new ArrayList<>();
    if (row.filter().isBlank()) {
      faults.add(new RowFault(row.line(), "filter", "", RowSays.FILTER_NAME.with()));
    }
    if (row.pre() == null) {
      faults.add(new RowFault(row.line(), "pre_g", "", RowSays.PRE_MASS.with()));
    }
    if (row.posts().isEmpty()) {
      faults.add(new RowFault(row.line(), "post_g", "", RowSays.POST_MASS.with()));
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
      Reason expected =
          RowSays.VOLUME.with(rule.minVolume().toMillilitres(), rule.maxVolume().toMillilitres());
      faults.add(new RowFault(row.line(), "volume_ml", volume.toMillilitres(), expected));
    }
    Double u = row.volumeU();
    if (u != null && isWrong(u, volume)) {
      faults.add(new RowFault(row.line(), "volume_u_ml", u.toString(), RowSays.VOLUME_U.with()));
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
      faults.add(
          new RowFault(
              row.line(), "volume_ml", RowSays.A_VOLUME.with(), RowSays.NOTHING_FOR_SAND.with()));
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
      faults.add(
          new RowFault(
              row.line(),
              "mixture_g",
              RowSays.VOLUME_AND_MIXTURE.with(),
              RowSays.VOLUME_OR_MIXTURE.with()));
    }
    if (!EffectiveVolume.isHeavyEnough(row, extras)) {
      faults.add(
          new RowFault(row.line(), "mixture_g", RowSays.TOO_LITTLE.with(), RowSays.MIXTURE.with()));
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
    Reason found = made == null ? RowSays.NO_MATERIAL.with() : Reason.plain(made.word());
    switch (answer) {
      case FIT -> {}
      case COMBUSTIBLE ->
          faults.add(new RowFault(row.line(), "material", found, RowSays.NOT_BURNING.with()));
      case NOT_MUFFLED, MUFFLED_TOO_COLD ->
          faults.add(
              new RowFault(
                  row.line(), "muffled_c", String.valueOf(celsius), RowSays.MUFFLED.with()));
    }
  }
}
