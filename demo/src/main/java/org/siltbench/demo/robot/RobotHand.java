package org.siltbench.demo.robot;

import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.practice.Hand;
import org.siltbench.balance.practice.Load;

/** Reads what the bench asks for and does it with the hand at the practice balance. */
final class RobotHand {

  private final Function<String, Load> loads;
  private @Nullable Hand hand;

  /**
   * A hand that obeys.
   *
   * @param loads what lies on the pan when the bench asks for this
   */
  RobotHand(Function<String, Load> loads) {
    this.loads = loads;
  }

  /** From now on at this balance. */
  void at(Hand balance) {
    hand = balance;
  }

  /** Obeys one event. */
  void see(Map<String, @Nullable Object> event) {
    Hand now = hand;
    if (now == null) {
      return;
    }
    switch (String.valueOf(event.get("event"))) {
      case "place" -> now.put(loads.apply(String.valueOf(event.get("what"))));
      case "take-off" -> now.takeOff();
      case "rezero" -> now.zero();
      default -> {
        // The other events tell, they do not ask.
      }
    }
  }
}
