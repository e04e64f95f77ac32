package org.siltbench.station.window.today;

import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.shell.Screen;

/** What is due today. */
public final class TodayScreen implements Screen {

  private final TodayModel model;
  private final TodayView view;

  public TodayScreen(Desk desk) {
    model = new TodayModel(desk);
    view = new TodayView(model, desk.texts(TodayScreen.class), desk.clock().getZone());
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
