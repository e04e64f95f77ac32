package org.siltbench.station.work.lot;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.FilterFitness;
import org.siltbench.calc.ignition.FilterFitness.Material;
import org.siltbench.station.Problem;
import org.siltbench.station.life.About;
import org.siltbench.station.life.LotState;
import org.siltbench.station.register.RegisterView;

/** Whether a lot's filters may go into a furnace, by what was recorded of them. */
public final class LotFitness {

  private static final List<String> BURNS =
      List.of("cellulose", "paper", "nitrate", "acetate", "cotton");
  private static final List<String> MELTS =
      List.of("poly", "nylon", "ptfe", "pvdf", "membrane", "plastic");

  private LotFitness() {}

  /** The material a person's words mean; null where they do not tell. */
  public static @Nullable Material material(String words) {
    Material exact = Material.of(words);
    String text = words.toLowerCase(Locale.ROOT);
    if (exact != null) {
      return exact;
    }
    if (BURNS.stream().anyMatch(text::contains)) {
      return Material.CELLULOSE;
    }
    if (MELTS.stream().anyMatch(text::contains)) {
      return Material.MEMBRANE;
    }
    if (text.contains("quartz")) {
      return Material.QUARTZ_FIBRE;
    }
    boolean bound = text.contains("binder") && !text.matches(".*\\b(no|without)\\b.*binder.*");
    if (text.contains("glass")) {
      return bound ? Material.BOUND_GLASS_FIBRE : Material.GLASS_FIBRE;
    }
    return null;
  }

  /** The material recorded of a lot; null where none is, or its words do not tell. */
  public static @Nullable Material material(Optional<LotState> lot) {
    return lot.map(state -> material(state.fields().text("material"))).orElse(null);
  }

  /** The temperature a lot was muffled at as far as it is recorded: 550 °C, 0 for not, or null. */
  public static @Nullable Double muffled(Optional<LotState> lot) {
    if (lot.isEmpty() || lot.get().fields().text("muffled").isEmpty()) {
      return null;
    }
    return lot.get().fields().flag("muffled") ? FilterFitness.IGNITION_CELSIUS : 0.0;
  }

  /**
   * Refuses what burns, melts, or was not in the furnace before its pre-weigh.
   *
   * @throws Problem.Refused with what speaks against it
   */
  public static void requireForFurnace(RegisterView register, String lotName, String filter) {
    Optional<LotState> lot = LotState.fold(lotName, register.history(About.lot(lotName)));
    Material material = material(lot);
    Double celsius = muffled(lot);
    FilterFitness.Answer answer =
        FilterFitness.judge(
            material == null ? Material.GLASS_FIBRE : material,
            celsius != null && celsius > 0,
            celsius == null ? 0 : celsius);
    String name = "Filter " + filter + " of lot " + lotName;
    switch (answer) {
      case FIT -> {}
      case COMBUSTIBLE ->
          throw new Problem.Refused(
              LotSays.BURNS, name, lot.map(l -> l.fields().text("material")).orElse(""));
      case NOT_MUFFLED, MUFFLED_TOO_COLD -> throw new Problem.Refused(LotSays.NOT_MUFFLED, name);
    }
  }
}
