package org.siltbench.station.window.connect;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;
import org.siltbench.station.window.look.Segments;

/** Practice first, or a real balance: two panes. */
final class ConnectView extends VBox {

  ConnectView(Texts texts, Node practice, Node real) {
    getStyleClass().add("screen");
    StackPane body = new StackPane(practice);
    VBox.setVgrow(body, Priority.ALWAYS);
    Segments panes =
        new Segments(
            texts,
            "pane.",
            List.of("practice", "real"),
            pane -> body.getChildren().setAll(pane.equals("real") ? real : practice));
    panes.show("practice");
    HBox head =
        new HBox(Controls.whole(Controls.text(texts, "title", "title")), Controls.spring(), panes);
    head.getStyleClass().add("level");
    getChildren().addAll(head, body);
  }
}
