package org.siltbench.station.window.log;

import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.ScanLine;
import org.siltbench.station.window.look.Sheet;

/** Two filters exchanged in one act. */
final class SwapPane extends VBox {

  SwapPane(LogModel screen, Desk desk) {
    Texts texts = desk.texts(SwapPane.class);
    SwapModel model = screen.swapping();
    Sheet form =
        new Sheet(texts, 4, model::look)
            .text("first", model.first)
            .text("second", model.second)
            .choice(
                "swap.what",
                FXCollections.observableArrayList(List.of("post", "notes", "pre")),
                word -> texts.get("what." + word),
                model.what,
                2)
            .text("reason", model.amend().reason, 4);
    getStyleClass().addAll("card", "form");
    getChildren()
        .setAll(
            Controls.text(texts, "swap.hint", "hint"),
            new ScanLine(texts, "swap.scan", typed -> Entered.take(desk, screen, typed)),
            form,
            new AmendPane(model.amend(), texts, Controls.button(texts, "look", model::look)));
  }
}
