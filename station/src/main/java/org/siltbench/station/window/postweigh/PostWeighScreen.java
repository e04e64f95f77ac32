package org.siltbench.station.window.postweigh;

import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.override.OverridePane;
import org.siltbench.station.window.shell.Screen;
import org.siltbench.station.work.scan.BagScan;

/** Weighs loaded filters by their bags. */
public final class PostWeighScreen implements Screen {

  private final PostWeighModel model;
  private final PostWeighView view;

  public PostWeighScreen(Desk desk) {
    model = new PostWeighModel(desk);
    view =
        new PostWeighView(
            model,
            new OverridePane(model.override(), desk.texts(OverridePane.class)),
            desk.texts(PostWeighScreen.class));
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
    return Optional.of(
        new ScanTaker() {
          @Override
          public boolean scanned(BagScan bag) {
            return model.scanned(bag.filter().text());
          }

          @Override
          public boolean scannedOther(String text) {
            return model.scannedDish(text);
          }
        });
  }

  @Override
  public boolean oneKey() {
    return view.oneKey();
  }
}
