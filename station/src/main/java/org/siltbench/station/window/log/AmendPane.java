package org.siltbench.station.window.log;

import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Grid;
import org.siltbench.station.work.paper.InPrint;
import org.siltbench.station.work.results.Impact;

/** The two steps of an act, and the results it changes: before it is done, and after. */
final class AmendPane extends VBox {

  private final Texts texts;
  private final Label said = Controls.label("row-title");
  private final ObservableList<Impact.Change> changes = FXCollections.observableArrayList();
  private final Grid<Impact.Change> grid;
  private final Button act;

  AmendPane(AmendModel model, Texts texts, Button... looks) {
    this.texts = texts;
    this.act = Controls.primary(texts, "act", model::act);
    FlowPane acts = Controls.acts(looks);
    acts.getChildren().add(act);
    said.setId("amend-said");
    grid =
        new Grid<Impact.Change>(texts, "changes", "changes.none", changes)
            .column("filter", 2.4, change -> InPrint.id(change.filter()))
            .column("sample", 1.7, Impact.Change::sample)
            .nodes("change", 6, this::change);
    grid.setPrefHeight(150);
    grid.setMinHeight(110);
    getStyleClass().add("form");
    getChildren().setAll(acts, said, grid);
    model.state().subscribe(this::show);
  }

  private Node change(Impact.Change change) {
    Label before = Controls.cell(change.before().in(texts.locale()));
    before.getStyleClass().add("struck");
    Label after = Controls.cell(change.after().in(texts.locale()));
    after.getStyleClass().add("replaced");
    return new VBox(before, after);
  }

  private void show(AmendModel.State state) {
    changes.setAll(state.changes());
    boolean some = !state.changes().isEmpty();
    said.setText(
        switch (state.step()) {
          case TYPED -> "";
          case LOOKED -> texts.get("would.change", state.changes().size());
          case DONE -> texts.get("did.change", state.changes().size());
        });
    said.setManaged(!said.getText().isEmpty());
    Controls.shown(grid, some);
    act.setDisable(state.step() != AmendModel.Step.LOOKED);
  }
}
