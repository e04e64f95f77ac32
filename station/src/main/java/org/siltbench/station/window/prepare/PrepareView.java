package org.siltbench.station.window.prepare;

import java.util.Map;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Parts;
import org.siltbench.station.window.look.Words;
import org.siltbench.station.window.prepare.PrepareModel.Part;
import org.siltbench.station.work.batch.BatchCount;

/** Left the batches, right what is done with them. */
final class PrepareView extends HBox {

  private final PrepareModel model;
  private final Texts texts;
  private final Words words;
  private final VBox rows = new VBox();

  PrepareView(PrepareModel model, Desk desk) {
    this.model = model;
    this.texts = desk.texts(PrepareView.class);
    this.words = new Words(desk.locale());
    Map<Part, Node> panes =
        Map.of(
            Part.PLAN, new PlanPane(model.plan(), texts),
            Part.LOT, new LotPane(model.lot(), texts),
            Part.PAPERS, new PapersPane(model.papers(), texts),
            Part.TRIP, new TripPane(model, desk),
            Part.AUDIT, new AuditPane(model, desk));
    getStyleClass().addAll("screen", "halves");
    getChildren().setAll(list(), new Parts<>(texts, "part.", Part.class, panes, model.part()));
    model.batches().subscribe(this::show);
    model.chosen().subscribe(this::show);
    model.part().subscribe(this::bring);
  }

  private VBox list() {
    rows.getStyleClass().add("rows");
    ScrollPane scroll = Controls.scroll(rows);
    scroll.setFocusTraversable(false);
    VBox list = new VBox(Controls.text(texts, "title", "title"), scroll);
    list.getStyleClass().addAll("list", "slim");
    return list;
  }

  private void bring(Part wanted) {
    if (wanted == Part.PAPERS) {
      model.papers().shown();
    }
  }

  private void show() {
    if (model.batches().isEmpty()) {
      rows.getChildren().setAll(Controls.text(texts, "no.batches", "hint"));
    } else {
      rows.getChildren().setAll(model.batches().stream().map(this::row).toList());
    }
  }

  private Node row(BatchCount one) {
    BatchState batch = one.batch();
    Label name = Controls.label("row-title");
    name.setText(batch.name());
    Label more = Controls.label("hint");
    more.setText(texts.get("batch.is", batch.code(), batch.lot(), batch.method()));
    Label counts = Controls.label();
    counts.setText(
        one.counts().entrySet().stream()
            .map(entry -> entry.getValue() + " " + words.status(entry.getKey()))
            .collect(Collectors.joining(", ")));
    VBox said = new VBox(name, more, counts);
    said.getStyleClass().add("said");
    HBox.setHgrow(said, Priority.ALWAYS);
    Button choose = Controls.button(texts, "choose", () -> model.choose(batch));
    choose.setId("choose-" + batch.code());
    choose.setAccessibleText(choose.getAccessibleText() + ": " + batch.name());
    HBox row = new HBox(said, choose);
    row.getStyleClass().addAll("card", "row");
    if (model.chosen().get().stream().anyMatch(now -> now.code().equals(batch.code()))) {
      row.getStyleClass().add("picked");
    }
    return row;
  }
}
