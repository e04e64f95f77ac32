package org.siltbench.demo.storm;

import java.time.Duration;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import org.siltbench.balance.practice.Load;
import org.siltbench.calc.quantity.Mass;

/** The truth about all filters and weights of the campaign, and what a hand lays on the pan. */
public final class Truths {

  private final Map<String, TrueFilter> filters = new LinkedHashMap<>();
  private final Map<String, Mass> weights = new LinkedHashMap<>();
  private final Set<String> moist = new LinkedHashSet<>();
  private final SplittableRandom chance;
  private final double handlingMg;

  /**
   * Nothing yet.
   *
   * @param handlingMg standard deviation of one weighing against the next of the same dry filter:
   *     position, charge, air, mg
   */
  public Truths(long seed, double handlingMg) {
    this.chance = new SplittableRandom(seed);
    this.handlingMg = handlingMg;
  }

  /** A new filter of the lot: about that of a 47 mm glass-fibre filter (from memory). */
  public void prepare(String id) {
    filters.put(id, TrueFilter.washed(id, 108 + 2.5 * chance.nextGaussian()));
  }

  /** A check weight and its true mass. */
  public void weight(String name, Mass mass) {
    weights.put(name, mass);
  }

  /** One filter. */
  public TrueFilter of(String id) {
    TrueFilter filter = filters.get(id);
    if (filter == null) {
      throw new IllegalArgumentException("the campaign has no filter " + id);
    }
    return filter;
  }

  /** Changes one filter. */
  public void change(String id, UnaryOperator<TrueFilter> change) {
    filters.put(id, change.apply(of(id)));
  }

  /** One stay in the oven. */
  public void dry(Collection<String> ids) {
    ids.forEach(id -> change(id, TrueFilter::dried));
  }

  /** From now on this filter has been lying about in damp air, or no longer. */
  public void damp(String id, boolean now) {
    if (now) {
      moist.add(id);
    } else {
      moist.remove(id);
    }
  }

  /** What lies on the pan when the bench asks for this: a filter ID or {@code weight NAME}. */
  public Load asked(String what) {
    String[] words = what.split(" ", 3);
    if (words[0].equals("weight")) {
      Mass mass = weights.get(words[1]);
      if (mass == null) {
        throw new IllegalArgumentException("the campaign has no weight " + words[1]);
      }
      return Load.of(mass);
    }
    return load(of(words[0]));
  }

  private Load load(TrueFilter filter) {
    double mg = filter.onPan() + handlingMg * chance.nextGaussian();
    Load load = Load.of(Mass.ofMilligrams(mg));
    return moist.contains(filter.id()) ? load.moist(0.9, 9, Duration.ofMinutes(2)) : load;
  }
}
