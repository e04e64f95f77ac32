package org.siltbench.station.window.receipt;

import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Choices;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.work.issue.CustodyLine;

/** The hands that bags pass through: those so far, and the next. */
final class CustodyPane extends VBox {

  private final CustodyModel model;
  private final Texts texts;

  CustodyPane(CustodyModel model, Desk desk) {
    this.model = model;
    this.texts = desk.texts(CustodyPane.class);
    Moments moments = new Moments(desk.clock(), desk.locale());
    ComboBox<String> trip = Choices.of(model.trips(), name -> name);
    trip.getStyleClass().add("long");
    trip.valueProperty().bindBidirectional(model.trip);
    Grid<CustodyLine> lines =
        new Grid<>(texts, "custody", "custody.none", model.lines())
            .column("time", 2.8, line -> line.time().map(moments::at).orElse(""))
            .column("relinquished", 2, CustodyLine::relinquished)
            .column("received", 2, CustodyLine::received)
            .column("bags", 1.2, CustodyLine::bags)
            .column("seals", 2, CustodyLine::seals)
            .column("cool", 1, CustodyLine::temperatureC);
    VBox.setVgrow(lines, Priority.ALWAYS);
    GridPane form = new GridPane();
    form.getStyleClass().add("sheet");
    form.addRow(
        0,
        field("relinquished", model.relinquished),
        field("received", model.received),
        field("bags.counted", model.bags));
    form.addRow(
        1,
        field("seals", model.seals),
        field("cool", model.temperature),
        field("time", model.time));
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            Controls.captioned(texts, "trip", trip),
            lines,
            form,
            Controls.acts(Controls.primary(texts, "custody.record", model::record)));
  }

  private Node field(String key, StringProperty value) {
    TextField field = new TextField();
    field.setPrefColumnCount(9);
    field.textProperty().bindBidirectional(value);
    field.setOnAction(event -> model.record());
    return Controls.field(texts, key, field);
  }
}
