package org.siltbench.station.work.drying;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.siltbench.station.Problem;

/** Which filter lies in which dish. */
public final class Dishes {

  private Dishes() {}

  /** Numbers the dishes from 1 where none is named; numbers that are taken are passed over. */
  public static Map<String, String> numbered(Map<String, String> dishes) {
    Map<String, String> out = new LinkedHashMap<>();
    int next = 1;
    for (Map.Entry<String, String> one : dishes.entrySet()) {
      String dish = one.getValue();
      while (dish.isEmpty()) {
        String free = Integer.toString(next++);
        dish = dishes.containsValue(free) ? "" : free;
      }
      out.put(one.getKey(), dish);
    }
    return out;
  }

  /**
   * Each filter has a dish of its own, where it has one.
   *
   * @throws Problem.Refused if two share one
   */
  public static void requireOneEach(Map<String, String> placed) {
    Map<String, String> taken = new HashMap<>();
    placed.forEach(
        (id, dish) -> {
          String other = dish.isEmpty() ? null : taken.putIfAbsent(dish, id);
          if (other != null) {
            throw new Problem.Refused(DryingSays.TWO_IN_DISH, dish, other, id);
          }
        });
  }
}
