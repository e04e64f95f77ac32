package org.siltbench.station.work.weigh;

import java.util.function.Consumer;
import java.util.function.Function;
import org.siltbench.balance.practice.Hand;
import org.siltbench.balance.practice.Load;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.calc.quantity.Mass;

/**
 * The hand at the practice balance: it does what the bench asks of a person. It reaches the pan by
 * its own way, never through the link.
 */
public final class PracticeHand implements Consumer<WeighEvent> {

  private final Hand hand;
  private final Function<String, Load> filters;

  /**
   * A hand that obeys.
   *
   * @param filters what lies on the pan when this filter ID is put there
   */
  public PracticeHand(Hand hand, Function<String, Load> filters) {
    this.hand = hand;
    this.filters = filters;
  }

  @Override
  public void accept(WeighEvent event) {
    if (event instanceof WeighEvent.Place place) {
      hand.put(load(place.what()));
    } else if (event instanceof WeighEvent.TakeOff) {
      hand.takeOff();
    } else if (event instanceof WeighEvent.OnPan on && on.event() instanceof PanEvent.Rezero) {
      hand.zero();
    }
  }

  private Load load(PanLoad what) {
    if (what instanceof PanLoad.OfFilter filter) {
      return filters.apply(filter.id());
    }
    if (what instanceof PanLoad.OfWeight weight) {
      return Load.of(weight.mass());
    }
    return Load.of(Mass.ofMilligrams("100"));
  }
}
