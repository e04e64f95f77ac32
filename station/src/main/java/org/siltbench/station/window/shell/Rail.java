package org.siltbench.station.window.shell;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.look.Controls;

/** The way between the screens, in the order of the work, each with its key. */
final class Rail extends VBox {

  Rail(List<ScreenEntry> screens, Desk desk, Texts texts) {
    getStyleClass().add("rail");
    ToggleGroup group = new ToggleGroup();
    for (ScreenEntry screen : screens.stream().filter(ScreenEntry::inRail).toList()) {
      getChildren().add(button(screen, desk, texts, group));
    }
  }

  private static ToggleButton button(
      ScreenEntry screen, Desk desk, Texts texts, ToggleGroup group) {
    String name = texts.get("screen." + screen.id());
    String key = screen.key().getDisplayText();
    Label called = new Label(name);
    Label keyed = new Label(key);
    keyed.getStyleClass().add("rail-key");
    HBox face = new HBox(called, Controls.spring(), keyed);
    face.getStyleClass().add("rail-face");
    ToggleButton button = new ToggleButton();
    button.setGraphic(face);
    button.setMaxWidth(Double.MAX_VALUE);
    face.prefWidthProperty().bind(button.widthProperty().multiply(0.88));
    button.setId("rail-" + screen.id());
    button.setToggleGroup(group);
    button.setAccessibleText(texts.get("rail.name", name, key));
    button.setOnAction(
        event -> {
          button.setSelected(true);
          desk.go(screen.id());
        });
    desk.front().subscribe(front -> button.setSelected(front.equals(screen.id())));
    return button;
  }
}
