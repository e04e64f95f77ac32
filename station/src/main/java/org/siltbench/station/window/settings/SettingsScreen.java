package org.siltbench.station.window.settings;

import java.util.Map;
import java.util.Objects;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.shell.Screen;

/** The settings, room by room. */
public final class SettingsScreen implements Screen {

  private final SettingsModel model;
  private final SettingsView view;

  public SettingsScreen(Desk desk) {
    Texts texts = desk.texts(SettingsScreen.class);
    model = new SettingsModel(desk);
    view =
        new SettingsView(
            texts,
            Map.of(
                "balance", new BalanceRoomPane(model, texts),
                "labels", new LabelRoomPane(model, texts),
                "methods", new MethodsPane(model, texts),
                "people", new PeoplePane(model, texts),
                "looks", new LooksPane(model, texts)));
    view.getStylesheets()
        .add(
            Objects.requireNonNull(SettingsScreen.class.getResource("settings.css"))
                .toExternalForm());
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public void shown() {
    model.refresh();
  }
}
