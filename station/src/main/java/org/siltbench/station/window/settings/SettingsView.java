package org.siltbench.station.window.settings;

import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Segments;

/** One room in front at a time. */
final class SettingsView extends VBox {

  SettingsView(Texts texts, Map<String, Node> rooms) {
    StackPane body = new StackPane(rooms.get("balance"));
    VBox.setVgrow(body, Priority.ALWAYS);
    Segments panes =
        new Segments(
            texts,
            "room.",
            List.of("balance", "labels", "methods", "people", "looks"),
            room -> body.getChildren().setAll(rooms.get(room)));
    panes.show("balance");
    HBox head =
        new HBox(Controls.whole(Controls.text(texts, "title", "title")), Controls.spring(), panes);
    head.getStyleClass().add("level");
    getStyleClass().add("screen");
    getChildren().addAll(head, body);
  }
}
