package org.siltbench.station.work.preweigh;

import org.siltbench.station.work.weigh.PanLoad;

/**
 * One filter to be put on the pan.
 *
 * @param filter its ID
 * @param round the how-manieth weighing that counts, from 1
 * @param dish the numbered dish it lies in, or empty where it gets its bag at once
 */
public record Turn(String filter, int round, String dish) {

  /** What to put on the pan. */
  PanLoad load() {
    return PanLoad.OfFilter.in(filter, dish);
  }
}
