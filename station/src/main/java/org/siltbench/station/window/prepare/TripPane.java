package org.siltbench.station.window.prepare;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Sheet;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.paper.InPrint;

/** Bags to a trip and back. */
final class TripPane extends VBox {

  private final TripModel model;
  private final Texts texts;
  private final Grid<FilterState> grid;
  private final Label which = Controls.label("row-title");

  TripPane(PrepareModel screen, Desk desk) {
    this.model = screen.trip();
    this.texts = desk.texts(TripPane.class);
    Words words = new Words(desk.locale());
    which.setId("which");
    grid =
        new Grid<FilterState>(texts, "trip.filters", "trip.none", model.filters())
            .column("filter", 2.5, filter -> InPrint.id(filter.id()))
            .column("role", 1.9, filter -> words.role(filter.role()))
            .column("status", 2.5, filter -> words.status(filter.status()))
            .column("trip", 2.3, FilterState::trip)
            .nodes("bag", 1.7, filter -> bag(filter))
            .nodes("goes", 1.4, this::goes);
    VBox.setVgrow(grid, Priority.ALWAYS);
    Sheet form =
        new Sheet(texts, 4, model::issue)
            .text("trip", model.trip)
            .text("to", model.to)
            .text("seals", model.seals)
            .text("out", model.out);
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            which,
            grid,
            new ScanLine(texts, "trip.scan", typed -> Entered.take(desk, screen, typed)),
            form,
            Controls.acts(
                Controls.primary(texts, "issue", model::issue),
                Controls.button(texts, "back", model::back)));
    model.scanned().subscribe(this::scanned);
    scanned();
  }

  private static Node bag(FilterState filter) {
    return filter.bagClosed() ? Shape.TICK.node() : Controls.cell("–");
  }

  private Node goes(FilterState filter) {
    return model.scanned().contains(filter.id())
        ? Controls.chip(Tone.GOOD, Shape.TICK, texts.get("goes.yes"))
        : Controls.cell("");
  }

  private void scanned() {
    int count = model.scanned().size();
    which.setText(count == 0 ? texts.get("which.all") : texts.get("which.some", count));
    grid.refresh();
  }
}
