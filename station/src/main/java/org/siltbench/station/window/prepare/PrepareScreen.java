package org.siltbench.station.window.prepare;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.shell.Screen;

/** Everything before the trip. */
public final class PrepareScreen implements Screen {

  private final PrepareModel model;
  private final PrepareView view;

  public PrepareScreen(Desk desk) {
    model = new PrepareModel(desk);
    view = new PrepareView(model, desk);
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
