package org.siltbench.station.life;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Successive masses of one filter, as the constant-mass rule looks at them. */
public final class Series {

  private Series() {}

  /** One mass a drying cycle, the last one of each, in the order of the cycles' last masses. */
  public static List<Weighed> onePerCycle(List<Weighed> counting) {
    Map<String, Weighed> byCycle = new LinkedHashMap<>();
    for (Weighed weighed : counting) {
      byCycle.remove(weighed.cycle());
      byCycle.put(weighed.cycle(), weighed);
    }
    return List.copyOf(byCycle.values());
  }
}
