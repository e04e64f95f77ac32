package org.siltbench.balance.stable;

import java.util.Locale;
import org.siltbench.calc.quantity.Mass;

/** What the pan cycle tells the person: what happened, and what to do next. */
final class PanWords {

  private PanWords() {}

  static String outside(Mass net, PanSettings.Window window) {
    boolean heavy = net.compareTo(window.most()) > 0;
    String what =
        heavy
            ? "more than a filter of this batch weighs. Two filters, or a dish? "
            : "less than a filter of this batch weighs. A touch, or a piece of one? ";
    return net + " is " + what + "Nothing is recorded. Clear the pan and load again.";
  }

  static String moisture(Verdict.TakingUp up, Mass allowance) {
    return String.format(
        Locale.ROOT,
        "The filter gains %.2f mg a minute; about %.2f mg since the desiccator, where the method"
            + " allows %.2f mg. Nothing is recorded. Back into the desiccator, or dry again.",
        up.mgPerMin(),
        up.gainMg(),
        allowance.milligrams());
  }

  static String drift(Verdict.Drifting drift) {
    return String.format(
        Locale.ROOT,
        "The value still drifts by %.2f mg a minute: a filter not yet cool, or static. Nothing is"
            + " recorded. Let it cool in the desiccator; discharge it; close the doors.",
        drift.mgPerMin());
  }

  static String disturbed() {
    return "The value keeps jumping: draught, vibration, or a hand on the table. Nothing is"
        + " recorded. Close the doors, wait, and load again.";
  }

  static String timeOut(long seconds) {
    return "Not at rest within "
        + seconds
        + " seconds. Nothing is recorded. Take the filter off and look for draught and vibration.";
  }
}
