package org.siltbench.station.window.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Form;
import org.siltbench.station.work.equip.BalanceRecord;

/** The record of the balance itself. */
final class BalancePane extends ScrollPane {

  private final Texts texts;
  private final Supplier<LocalDate> today;
  private final Form who;
  private final Form figures;
  private final Label state = Controls.label("subtitle");

  BalancePane(EquipModel model, Texts texts, Supplier<LocalDate> today) {
    this.texts = texts;
    this.today = today;
    who = new Form(texts).field("name", 14).field("serial", 12).field("resolution", 7);
    who.field("capacity", 7).field("calibrated", 9).field("due", 9);
    figures = new Form(texts).field("certificate.u", 7).field("linearity", 7);
    figures.field("eccentricity", 7).field("repeatability", 7);
    state.setId("balance.state");
    VBox card =
        new VBox(
            state,
            who,
            Controls.text(texts, "certificate.hint", "hint"),
            figures,
            Controls.primary(texts, "save.balance", () -> model.recordBalance(this::typed)));
    card.getStyleClass().add("card");
    setContent(card);
    setFitToWidth(true);
    model.balance().subscribe(this::show);
  }

  private String typed(String key) {
    return switch (key) {
      case "certificate.u", "linearity", "eccentricity", "repeatability" -> figures.get(key);
      default -> who.get(key);
    };
  }

  private void show(EquipModel.Known now) {
    state.setText(state(now));
    Optional<BalanceRecord> known = now.record();
    who.set("name", now.name());
    who.set("serial", known.map(BalanceRecord::serial).orElse(null));
    who.set("resolution", known.map(BalanceRecord::resolutionG).orElse(null));
    who.set("capacity", known.map(BalanceRecord::capacityG).orElse(null));
    who.set("calibrated", known.map(BalanceRecord::calibrated).orElse(null));
    who.set("due", known.map(BalanceRecord::due).orElse(null));
    figures.set("certificate.u", known.map(BalanceRecord::certificateMg).orElse(null));
    figures.set("linearity", known.map(BalanceRecord::linearityMg).orElse(null));
    figures.set("eccentricity", known.map(BalanceRecord::eccentricityMg).orElse(null));
    figures.set("repeatability", known.map(BalanceRecord::repeatabilityMg).orElse(null));
  }

  private String state(EquipModel.Known now) {
    if (now.name().isEmpty()) {
      return texts.get("balance.none");
    }
    if (now.record().isEmpty()) {
      return texts.get("balance.new", now.name());
    }
    boolean late = now.record().get().overdue(today.get());
    return texts.get(late ? "balance.overdue" : "balance.known", now.name());
  }
}
