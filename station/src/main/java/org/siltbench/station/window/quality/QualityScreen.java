package org.siltbench.station.window.quality;

import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.flag.FlagWords;
import org.siltbench.station.window.look.Moments;
import org.siltbench.station.window.shell.Screen;

/** The quality summary of a batch, and its release. */
public final class QualityScreen implements Screen {

  private final QualityModel model;
  private final QualityView view;

  public QualityScreen(Desk desk) {
    Texts texts = desk.texts(QualityScreen.class);
    model = new QualityModel(desk);
    view =
        new QualityView(
            model,
            texts,
            new FindingsPane(model, texts, new FlagWords(desk)),
            new ReleasePane(model, texts, new Moments(desk.clock(), desk.locale())));
    view.getStylesheets()
        .add(
            Objects.requireNonNull(QualityScreen.class.getResource("quality.css"))
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

  @Override
  public Optional<ScanTaker> scans() {
    return Optional.of(model::scanned);
  }
}
