package org.siltbench.station.command.balance;

import org.siltbench.balance.link.LinkSpec;
import org.siltbench.station.Problem;
import org.siltbench.station.work.weigh.Scale;

/** Reads what {@code --balance} says. */
final class Spec {

  private Spec() {}

  static LinkSpec parse(String text) {
    return Scale.parse(text);
  }

  /** What a library refuses about a link text is wrong use. */
  static Problem.WrongUse wrong(IllegalArgumentException e) {
    return new Problem.WrongUse(
        "The balance cannot be used so: " + e.getMessage() + ".", "Change the --balance text.");
  }
}
