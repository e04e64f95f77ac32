package org.siltbench.station.window.receipt;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.shell.Screen;

/** Returned bags and samples. */
public final class ReceiptScreen implements Screen {

  private final ReceiptModel model;
  private final ReceiptView view;

  public ReceiptScreen(Desk desk) {
    model = new ReceiptModel(desk);
    view = new ReceiptView(model, desk);
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
