package org.siltbench.demo.bench.all;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a measure that the page keeps.
 *
 * @param measure name of the measure
 * @param key short and stable: the history is kept under it
 * @param words what it says, for the page
 * @param path where it stands in the measure's document: names, and places in lists, between
 *     slashes
 * @param unit empty for a ratio or a count
 * @param goal what it is to reach, if there is a goal
 */
record Claim(
    String measure, String key, String words, String path, String unit, Optional<Goal> goal) {

  /** A bound of a figure, itself included. */
  record Goal(boolean most, BigDecimal bound) {

    boolean met(BigDecimal figure) {
      int side = figure.compareTo(bound);
      return most ? side <= 0 : side >= 0;
    }

    String words() {
      return (most ? "at most " : "at least ") + bound.toPlainString();
    }
  }

  /** A claim without a goal. */
  static Claim of(String measure, String key, String words, String path, String unit) {
    return new Claim(measure, key, words, path, unit, Optional.empty());
  }

  Claim atMost(String bound) {
    return new Claim(
        measure, key, words, path, unit, Optional.of(new Goal(true, new BigDecimal(bound))));
  }

  Claim atLeast(String bound) {
    return new Claim(
        measure, key, words, path, unit, Optional.of(new Goal(false, new BigDecimal(bound))));
  }

  /**
   * The figure in a measure's document; empty where the run did not make it.
   *
   * @throws NumberFormatException where something else than a figure stands there
   */
  Optional<BigDecimal> in(@Nullable Object document) {
    Object at = document;
    for (String step : path.split("/")) {
      at = step(at, step);
    }
    return Optional.ofNullable(at).map(figure -> new BigDecimal(figure.toString()));
  }

  private static @Nullable Object step(@Nullable Object at, String step) {
    if (at instanceof Map<?, ?> map) {
      return map.get(step);
    }
    if (at instanceof List<?> list && step.matches("\\d{1,3}")) {
      int place = Integer.parseInt(step);
      return place < list.size() ? list.get(place) : null;
    }
    return null;
  }
}
