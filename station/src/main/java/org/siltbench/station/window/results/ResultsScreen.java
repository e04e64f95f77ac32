package org.siltbench.station.window.results;

import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.ScanTaker;
import org.siltbench.station.window.desk.Texts;
import org.siltbench.station.window.flag.FlagWords;
import org.siltbench.station.window.shell.Screen;

/** Results of a batch; a scanned bag brings its batch and its line. */
public final class ResultsScreen implements Screen {

  private final ResultsModel model;
  private final ResultsView view;

  public ResultsScreen(Desk desk) {
    Texts texts = desk.texts(ResultsScreen.class);
    model = new ResultsModel(desk);
    view = new ResultsView(model, new LoadModel(desk, model), texts, new FlagWords(desk));
    view.getStylesheets()
        .add(
            Objects.requireNonNull(ResultsScreen.class.getResource("results.css"))
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
