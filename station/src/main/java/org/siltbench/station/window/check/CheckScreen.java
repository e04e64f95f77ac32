package org.siltbench.station.window.check;

import java.util.Objects;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.shell.Screen;

/** The daily check; the one key weighs the check weight. */
public final class CheckScreen implements Screen {

  private final CheckModel model;
  private final EquipModel equip;
  private final CheckView view;

  public CheckScreen(Desk desk) {
    model = new CheckModel(desk);
    equip = new EquipModel(desk);
    view = new CheckView(model, equip, desk);
    view.getStylesheets()
        .add(Objects.requireNonNull(CheckScreen.class.getResource("check.css")).toExternalForm());
  }

  @Override
  public Node view() {
    return view;
  }

  @Override
  public void shown() {
    model.refresh();
    equip.refresh();
  }

  @Override
  public boolean oneKey() {
    if (model.isRunning()) {
      return false;
    }
    view.start();
    return true;
  }
}
