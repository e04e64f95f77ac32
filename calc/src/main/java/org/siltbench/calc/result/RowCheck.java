package org.siltbench.calc.result;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.method.Method;
import org.siltbench.calc.method.SampleRule;
import org.siltbench.calc.quantity.Volume;

/** What makes a row impossible to calculate. */
final class RowCheck {

  private RowCheck() {}

  static List<RowFault> faults(InputRow row, Method method) {
    List<RowFault> faults = new ArrayList<>(0);
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
    return faults;
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
    if (dry && volume.equals(Volume.ZERO)) {
      return false;
    }
    return volume.compareTo(rule.minVolume()) < 0 || volume.compareTo(rule.maxVolume()) > 0;
  }

  private static boolean isWrong(double u, @Nullable Volume volume) {
    boolean sound = u >= 0 && Double.isFinite(u);
    return !sound || (volume != null && volume.isPositive() && u >= volume.millilitres());
  }
}
