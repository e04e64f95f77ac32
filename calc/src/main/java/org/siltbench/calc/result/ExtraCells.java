package org.siltbench.calc.result;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.ignition.FilterFitness;
import org.siltbench.calc.quantity.Mass;

/**
 * The columns that few tables have: {@code part, ignited_g, material, muffled_c, expected_mg_l,
 * expected_u_mg_l, mixture_g, volume_of, dissolved_mg_l, dissolved_u_mg_l, dried_ml}.
 */
final class ExtraCells {

  private static final List<String> NAMES =
      List.of(
          "part",
          "ignited_g",
          "material",
          "muffled_c",
          "expected_mg_l",
          "expected_u_mg_l",
          "mixture_g",
          "volume_of",
          "dissolved_mg_l",
          "dissolved_u_mg_l",
          "dried_ml");

  private final Map<String, Integer> places;
  private final boolean any;

  ExtraCells(Map<String, Integer> places) {
    this.places = places;
    this.any = NAMES.stream().anyMatch(places::containsKey);
  }

  boolean any() {
    return any;
  }

  private int place(String column) {
    return places.getOrDefault(column, -1);
  }

  /** Null where all of these cells are empty. */
  @Nullable RowExtras read(RowCells cells) {
    if (NAMES.stream().allMatch(name -> cells.text(place(name)).isEmpty())) {
      return null;
    }
    return new RowExtras(
        part(cells),
        cells.mass("ignited_g", place("ignited_g")),
        material(cells),
        cells.number("muffled_c", place("muffled_c"), "a temperature in °C"),
        cells.number("expected_mg_l", place("expected_mg_l"), "a concentration in mg/L"),
        cells.number("expected_u_mg_l", place("expected_u_mg_l"), "an uncertainty in mg/L"),
        mixture(cells),
        filtrate(cells),
        cells.number("dissolved_mg_l", place("dissolved_mg_l"), "dissolved solids in mg/L"),
        cells.number("dissolved_u_mg_l", place("dissolved_u_mg_l"), "an uncertainty in mg/L"),
        cells.volume("dried_ml", place("dried_ml")));
  }

  private @Nullable Fraction part(RowCells cells) {
    String word = cells.text(place("part"));
    Fraction part = Fraction.of(word);
    if (part == null && !word.isEmpty()) {
      cells.fault("part", word, "sand, sand-in-dish or fines");
    }
    return part;
  }

  private FilterFitness.@Nullable Material material(RowCells cells) {
    String word = cells.text(place("material"));
    FilterFitness.Material material = FilterFitness.Material.of(word);
    if (material == null && !word.isEmpty()) {
      cells.fault("material", word, "one of " + FilterFitness.Material.words());
    }
    return material;
  }

  /**
   * A bottle's mass is no displayed digit of the filter's balance: it does not count for the step.
   */
  private @Nullable Mass mixture(RowCells cells) {
    Double grams = cells.number("mixture_g", place("mixture_g"), "a mass in g");
    return grams == null ? null : Mass.ofMilligrams(grams * 1000);
  }

  private boolean filtrate(RowCells cells) {
    String word = cells.text(place("volume_of"));
    boolean filtrate = word.equalsIgnoreCase("filtrate");
    if (!filtrate && !word.isEmpty() && !word.equalsIgnoreCase("mixture")) {
      cells.fault("volume_of", word, "mixture or filtrate");
    }
    return filtrate;
  }
}
