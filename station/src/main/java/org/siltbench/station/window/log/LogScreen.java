package org.siltbench.station.window.log;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.shell.Screen;

/** The log and its corrections. */
public final class LogScreen implements Screen {

  private final LogModel model;
  private final LogView view;

  public LogScreen(Desk desk) {
    model = new LogModel(desk);
    view = new LogView(model, desk);
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public void shown() {
    model.refresh();
  }

  @Override
  public Optional<ScanTaker> scans() {
    return Optional.of(model);
  }
}
