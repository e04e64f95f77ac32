package org.siltbench.station.window.log;

import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.correct.Swap;
import org.siltbench.station.work.scan.BagScan;

/** Two filters that were taken for each other. */
final class SwapModel {

  private final AmendModel amend;
  final StringProperty first = new SimpleStringProperty("");
  final StringProperty second = new SimpleStringProperty("");
  final StringProperty what = new SimpleStringProperty("post");

  SwapModel(AmendModel amend) {
    this.amend = amend;
    first.subscribe(amend::typed);
    second.subscribe(amend::typed);
    what.subscribe(amend::typed);
  }

  AmendModel amend() {
    return amend;
  }

  /** A scanned bag is the first, then the second. */
  void bag(String id) {
    (first.get().isBlank() ? first : second).set(id);
  }

  /** Shows what the exchange would change. */
  void look() {
    String a = first.get();
    String b = second.get();
    String which = what.get();
    String why = amend.reason.get();
    amend.look(
        () ->
            Amend.of(
                new Swap(
                    BagScan.of(a).filter().text(),
                    BagScan.of(b).filter().text(),
                    Swap.What.of(which),
                    why)));
  }
}
