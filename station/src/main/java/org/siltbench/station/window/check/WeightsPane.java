package org.siltbench.station.window.check;

import java.time.LocalDate;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Form;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.check.CheckWeight;

/** The check weights with their certificates. */
final class WeightsPane extends VBox {

  private final Texts texts;
  private final Supplier<LocalDate> today;

  WeightsPane(EquipModel model, Texts texts, Supplier<LocalDate> today) {
    this.texts = texts;
    this.today = today;
    Form form =
        new Form(texts)
            .field("weight.name", 10)
            .field("nominal", 7)
            .field("certified", 9)
            .field("expanded", 6)
            .field("k", 4)
            .field("certificate", 9)
            .field("weight.due", 8);
    form.set("k", "2");
    VBox card =
        new VBox(form, Controls.primary(texts, "save.weight", () -> model.recordWeight(form::get)));
    card.getStyleClass().add("card");
    Grid<CheckWeight> table =
        new Grid<>(texts, "weights", "weights.none", model.weights())
            .column("weight", 20, CheckWeight::name)
            .column("nominal", 18, w -> w.nominal().toGrams())
            .column("certified", 20, w -> w.certified().toGrams())
            .column("u", 16, WeightsPane::u)
            .nodes("due", 26, this::due);
    VBox.setVgrow(table, Priority.ALWAYS);
    getStyleClass().add("sheet");
    getChildren().addAll(table, card);
  }

  private static String u(CheckWeight weight) {
    var u = weight.standardUncertainty();
    return u == null ? "" : u.toMilligrams();
  }

  private Node due(CheckWeight weight) {
    LocalDate due = weight.due();
    if (due == null) {
      return Controls.cell(texts.get("due.unknown"));
    }
    return weight.overdue(today.get())
        ? Controls.chip(Tone.WARN, Shape.TRIANGLE, texts.get("due.past", due.toString()))
        : Controls.cell(due.toString());
  }
}
