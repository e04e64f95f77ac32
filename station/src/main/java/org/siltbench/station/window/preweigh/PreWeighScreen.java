package org.siltbench.station.window.preweigh;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.override.OverridePane;
import org.siltbench.station.window.shell.Screen;

/** Weighs clean filters, hands-free. */
public final class PreWeighScreen implements Screen {

  private final PreWeighModel model;
  private final PreWeighView view;

  public PreWeighScreen(Desk desk) {
    model = new PreWeighModel(desk);
    view =
        new PreWeighView(
            model,
            new OverridePane(model.override(), desk.texts(OverridePane.class)),
            desk.texts(PreWeighScreen.class));
  }

  @Override
  public Node view() {
    return view.node();
  }

  @Override
  public void shown() {
    model.refresh();
    view.focus();
  }

  @Override
  public Optional<ScanTaker> scans() {
    return Optional.of(bag -> model.scanned(bag.filter().text()));
  }

  @Override
  public boolean oneKey() {
    return view.oneKey();
  }
}
