package org.siltbench.station.window.log;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Sheet;

/** A filter taken out, held or set free. */
final class FilterPane extends VBox {

  FilterPane(LogModel screen, Desk desk) {
    Texts texts = desk.texts(FilterPane.class);
    FilterModel model = screen.judging();
    Sheet form =
        new Sheet(texts, 4, model::look)
            .text("judged", model.filter)
            .choice(
                "judge.act",
                FXCollections.observableArrayList(List.of("reject", "hold", "lift")),
                word -> texts.get("act." + word),
                model.act,
                2)
            .text("reason", model.amend().reason, 4);
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            Controls.text(texts, "judge.hint", "hint"),
            form,
            new AmendPane(model.amend(), texts, Controls.button(texts, "look", model::look)));
  }
}
