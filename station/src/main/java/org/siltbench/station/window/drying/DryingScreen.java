package org.siltbench.station.window.drying;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.shell.Screen;

/** Drying cycles. */
public final class DryingScreen implements Screen {

  private final DryingModel model;
  private final DryingView view;

  public DryingScreen(Desk desk) {
    model = new DryingModel(desk);
    view = new DryingView(model, desk);
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

  @Override
  public boolean oneKey() {
    return view.decide();
  }
}
