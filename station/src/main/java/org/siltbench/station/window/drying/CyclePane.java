package org.siltbench.station.window.drying;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.work.paper.InPrint;

/** A running cycle: dishes, loads, its end. */
final class CyclePane extends VBox {

  private final DryingModel screen;
  private final CycleModel model;
  private final Texts texts;
  private final Moments moments;
  private final Label title = Controls.label("subtitle");
  private final Label facts = Controls.label("hint");
  private final Label plan = Controls.label();
  private final GaugeRow gauge;

  CyclePane(DryingModel screen, Desk desk) {
    this.screen = screen;
    this.model = screen.cycle();
    this.texts = desk.texts(CyclePane.class);
    this.moments = new Moments(desk.clock(), desk.locale());
    this.gauge = new GaugeRow(model.gauge(), texts, "moment", model::end);
    title.setId("cycle-title");
    plan.setId("cycle-plan");
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            title,
            facts,
            plan,
            table(new Words(desk.locale())),
            Controls.line(
                new ScanLine(texts, "scan.out", typed -> Entered.take(desk, screen, typed)),
                Controls.button(texts, "mark.all", model::markAll)),
            gauge,
            Controls.acts(
                Controls.primary(texts, "end", model::end),
                Controls.button(texts, "restart", model::restart),
                Controls.button(texts, "wet", this::join),
                Controls.button(texts, "card", model::card)));
    model.shown().subscribe(this::show);
  }

  private void join() {
    model.shown().get().ifPresent(shown -> screen.join(shown.plan()));
  }

  private Grid<CycleModel.Dish> table(Words words) {
    Grid<CycleModel.Dish> grid =
        new Grid<>(texts, "inside", "inside.none", model.dishes())
            .column("dish", 1.2, CycleModel.Dish::dish)
            .column("filter", 2, row -> InPrint.id(row.state().id()))
            .column("role", 2, row -> words.role(row.state().role()))
            .column("load", 1.2, row -> Integer.toString(row.load()))
            .nodes("leaves", 2.6, this::leaves)
            .chosen(row -> model.mark(row.state().id()));
    VBox.setVgrow(grid, Priority.ALWAYS);
    return grid;
  }

  private Node leaves(CycleModel.Dish row) {
    return row.leaves()
        ? Controls.chip(Tone.GOOD, Shape.UP, texts.get("leaves.yes"))
        : Controls.cell(texts.get("leaves.no"));
  }

  private void show(Optional<CycleModel.Shown> shown) {
    shown.ifPresent(this::show);
  }

  private void show(CycleModel.Shown shown) {
    CycleState cycle = shown.plan().cycle();
    title.setText(texts.get("cycle.title", cycle.id(), texts.get("purpose.is." + cycle.purpose())));
    String heat =
        cycle.temperatureIn().isEmpty()
            ? texts.get("heat.none")
            : texts.get("heat", cycle.temperatureIn(), cycle.thermometer());
    facts.setText(texts.get("cycle.since", moments.at(cycle.in()), heat));
    plan.setText(LoadLines.of(shown.plan().loads(), texts, moments));
  }

  void focus() {
    gauge.focus();
  }
}
