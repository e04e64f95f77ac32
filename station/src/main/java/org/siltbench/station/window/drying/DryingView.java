package org.siltbench.station.window.drying;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.life.CycleState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.window.look.Tone;
import org.siltbench.station.work.drying.Desiccator;

/** Left what dries and cools; right the cycle that is begun or ended. */
final class DryingView extends HBox {

  private final DryingModel model;
  private final Texts texts;
  private final Moments moments;
  private final VBox rows = new VBox();
  private final VBox side = new VBox();
  private final StartPane start;
  private final CyclePane cycle;

  DryingView(DryingModel model, Desk desk) {
    this.model = model;
    this.texts = desk.texts(DryingView.class);
    this.moments = new Moments(desk.clock(), desk.locale());
    this.start = new StartPane(model, desk);
    this.cycle = new CyclePane(model, desk);
    getStyleClass().addAll("screen", "halves");
    HBox.setHgrow(side, Priority.ALWAYS);
    side.getStyleClass().add("side");
    getChildren().setAll(list(), side);
    model.items().subscribe(this::show);
    model.side().subscribe(this::side);
    model.cycle().shown().subscribe(this::show);
    show();
  }

  private VBox list() {
    rows.getStyleClass().add("rows");
    ScrollPane scroll = Controls.scroll(rows);
    scroll.setFocusTraversable(false);
    Button begin = Controls.primary(texts, "begin", model::begin);
    HBox head = new HBox(Controls.text(texts, "title", "title"), Controls.spring(), begin);
    head.getStyleClass().add("head");
    VBox list = new VBox(head, scroll);
    list.getStyleClass().add("list");
    return list;
  }

  private void side(DryingModel.Side shown) {
    side.getChildren()
        .setAll(
            switch (shown) {
              case START -> start;
              case CYCLE -> cycle;
              case NONE -> Controls.text(texts, "side.none", "hint");
            });
    show();
    switch (shown) {
      case START -> start.focus();
      case CYCLE -> cycle.focus();
      case NONE -> {}
    }
  }

  private void show() {
    List<? extends Node> shown = model.items().stream().map(this::row).toList();
    if (shown.isEmpty()) {
      rows.getChildren().setAll(Controls.text(texts, "nothing", "hint"));
    } else {
      rows.getChildren().setAll(shown);
    }
  }

  private Node row(DryingModel.Item item) {
    if (item instanceof DryingModel.InOven in) {
      return oven(in);
    }
    return desiccator((DryingModel.InDesiccator) item);
  }

  private HBox oven(DryingModel.InOven in) {
    CycleState state = in.plan().cycle();
    boolean done = in.plan().mayLeave(in.now());
    HBox chip =
        done
            ? Controls.chip(Tone.GOOD, Shape.UP, texts.get("chip.out"))
            : Controls.chip(
                Tone.WAIT,
                Shape.CLOCK,
                texts.get("chip.left", moments.span(in.plan().left(in.now()))));
    String title = texts.get("oven.title", state.id(), state.inside().size());
    String hint =
        texts.get("oven.hint", moments.at(state.in()), moments.at(in.plan().earliestOut()));
    Button open = Controls.button(texts, "open", () -> model.open(state.id()));
    open.setId("open-" + state.id());
    open.setAccessibleText(open.getAccessibleText() + ": " + title);
    HBox row = card(done ? Tone.GOOD : Tone.WAIT, Shape.LEVEL, title, hint, chip, open);
    boolean picked =
        model.side().get() == DryingModel.Side.CYCLE
            && model.cycle().shown().get().stream()
                .anyMatch(shown -> shown.plan().cycle().id().equals(state.id()));
    if (picked) {
      row.getStyleClass().add("picked");
    }
    return row;
  }

  private HBox desiccator(DryingModel.InDesiccator in) {
    Desiccator.Cooling load = in.load();
    String left = moments.span(load.left(in.now()));
    HBox chip =
        switch (load.at(in.now())) {
          case COOLING -> Controls.chip(Tone.WAIT, Shape.CLOCK, texts.get("chip.left", left));
          case READY -> Controls.chip(Tone.GOOD, Shape.DOWN, texts.get("chip.weigh", left));
          case STALE -> Controls.chip(Tone.WARN, Shape.DROP, texts.get("chip.stale"));
        };
    Tone tone =
        switch (load.at(in.now())) {
          case COOLING -> Tone.WAIT;
          case READY -> Tone.GOOD;
          case STALE -> Tone.WARN;
        };
    String title = texts.get("cool.title", load.cycle(), load.dishes().size());
    String hint =
        texts.get(
            "cool.hint",
            moments.at(load.out()),
            moments.at(load.cooledUntil()),
            moments.at(load.usefulUntil()));
    Node go =
        load.at(in.now()) == Desiccator.Readiness.READY
            ? Controls.button(texts, "weigh", model::weigh)
            : Controls.label();
    return card(tone, Shape.DROP, title, hint, chip, go);
  }

  private static HBox card(
      Tone tone, Shape shape, String title, String hint, HBox chip, Node action) {
    Label name = Controls.label("row-title");
    name.setText(title);
    Label more = Controls.label("hint");
    more.setText(hint);
    VBox said = new VBox(name, more, chip);
    said.getStyleClass().add("said");
    HBox.setHgrow(said, Priority.ALWAYS);
    HBox row = new HBox(shape.node("row-shape"), said, action);
    row.getStyleClass().addAll("card", "row", tone.style());
    return row;
  }

  /** The one key: starts what is put together, or takes out what leaves. */
  boolean decide() {
    switch (model.side().get()) {
      case START -> model.start().start();
      case CYCLE -> model.cycle().end();
      case NONE -> model.begin();
    }
    return true;
  }
}
