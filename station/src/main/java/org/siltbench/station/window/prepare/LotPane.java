package org.siltbench.station.window.prepare;

import javafx.beans.property.BooleanProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.FocusScroll;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Sheet;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.lot.LotList;

/** Lots: the list, a new one, the blank-loss test. */
final class LotPane extends VBox {

  private final Texts texts;
  private final ObservableList<String> names = FXCollections.observableArrayList();

  LotPane(LotModel model, Texts texts) {
    this.texts = texts;
    Grid<LotList.Line> grid =
        new Grid<LotList.Line>(texts, "lots", "lots.none", model.lots())
            .column("lot", 1.6, line -> line.lot().name())
            .column("material", 3, line -> line.lot().fields().text("material"))
            .column("pore", 1.6, line -> line.lot().fields().text("pore_um"))
            .column("diameter", 1.6, line -> line.lot().fields().text("diameter_mm"))
            .column("window", 2.6, LotList.Line::window)
            .nodes("tested", 2.2, this::tested)
            .chosen(line -> model.tested.set(line.lot().name()));
    grid.setMinHeight(130);
    VBox.setVgrow(grid, Priority.ALWAYS);
    model.lots().subscribe(() -> rename(model));
    rename(model);
    VBox inside =
        new VBox(
            Controls.text(texts, "lot.new", "subtitle"),
            describe(model),
            Controls.acts(Controls.primary(texts, "lot.record", model::describe)),
            Controls.text(texts, "lot.test", "subtitle"),
            test(model),
            Controls.acts(Controls.button(texts, "lot.judge", model::test)));
    inside.getStyleClass().add("form");
    FocusScroll scroll = new FocusScroll(inside);
    getStyleClass().addAll("card", "form");
    getChildren().setAll(grid, scroll);
  }

  private void rename(LotModel model) {
    String chosen = model.tested.get();
    names.setAll(model.lots().stream().map(line -> line.lot().name()).toList());
    model.tested.set(chosen);
  }

  private Node tested(LotList.Line line) {
    String word = texts.get("verdict." + line.lot().verdict());
    return switch (line.lot().verdict()) {
      case "passed" -> Controls.chip(Tone.GOOD, Shape.TICK, word);
      case "failed" -> Controls.chip(Tone.BAD, Shape.CROSS, word);
      default -> Controls.chip(Tone.PLAIN, Shape.RING, word);
    };
  }

  private Sheet describe(LotModel model) {
    Sheet form = new Sheet(texts, 4, model::describe);
    form.text("lot.name", model.field("lot.name"))
        .text("maker", model.field("maker"))
        .text("material", model.field("material"))
        .text("window", model.field("window"))
        .text("pore", model.field("pore"))
        .text("diameter", model.field("diameter"));
    return form.add(
        Controls.acts(
            tick("washed", model.washed),
            tick("dried", model.dried),
            tick("muffled", model.muffled)),
        4);
  }

  private Node tick(String key, BooleanProperty value) {
    CheckBox box = Controls.check(texts, key);
    box.selectedProperty().bindBidirectional(value);
    return box;
  }

  private Sheet test(LotModel model) {
    return new Sheet(texts, 4, model::test)
        .choice("tested", names, name -> name, model.tested)
        .text("losses", model.field("losses"))
        .text("area", model.field("area"))
        .text("limit", model.field("limit"));
  }
}
