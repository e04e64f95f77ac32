package org.siltbench.labels.cycle;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The card on the oven door.
 *
 * @param cycle the cycle's number
 * @param purpose for example "post-weigh, second drying"
 * @param temperature set temperature and limits, for example "103 to 105 °C"
 * @param in when the oven was back in range, or null: then it is written in by hand
 * @param earliestOut when drying may end, or null
 * @param cooledUntil when cooling ends, or null
 * @param usefulUntil the latest useful weighing, or null
 * @param operator who loaded it
 * @param dishes what stands where
 */
public record CycleCard(
    String cycle,
    String purpose,
    String temperature,
    @Nullable OffsetDateTime in,
    @Nullable OffsetDateTime earliestOut,
    @Nullable OffsetDateTime cooledUntil,
    @Nullable OffsetDateTime usefulUntil,
    String operator,
    List<Dish> dishes) {

  public CycleCard {
    dishes = List.copyOf(dishes);
  }

  /** A dish and the filter in it. */
  public record Dish(String dish, String filter, String note) {}
}
