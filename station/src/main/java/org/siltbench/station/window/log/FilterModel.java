package org.siltbench.station.window.log;

import java.util.List;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.siltbench.station.work.amend.Amend;
import org.siltbench.station.work.correct.Hold;
import org.siltbench.station.work.correct.Rejection;
import org.siltbench.station.work.scan.BagScan;

/** A filter that is taken out, whose result is kept back or set free again. */
final class FilterModel {

  private final AmendModel amend;
  final StringProperty filter = new SimpleStringProperty("");
  final StringProperty act = new SimpleStringProperty("reject");

  FilterModel(AmendModel amend) {
    this.amend = amend;
    filter.subscribe(amend::typed);
    act.subscribe(amend::typed);
  }

  AmendModel amend() {
    return amend;
  }

  /** Shows what it would change. */
  void look() {
    String id = filter.get();
    String which = act.get();
    String why = amend.reason.get();
    amend.look(() -> amend(BagScan.of(id).filter().text(), which, why));
  }

  private static Amend amend(String id, String which, String why) {
    return which.equals("reject")
        ? Amend.of(new Rejection(id, why))
        : Amend.of(new Hold(List.of(id), which.equals("lift"), why));
  }
}
