package org.siltbench.station.window.look;

import java.util.function.UnaryOperator;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import org.siltbench.station.window.desk.Doing;
import org.siltbench.station.window.desk.Texts;

/** How far long work is, and the button that stops it; takes no place while there is none. */
public final class DoingView extends HBox {

  /**
   * A view of it.
   *
   * @param words the words of a step
   */
  public DoingView(Texts texts, Doing doing, UnaryOperator<String> words) {
    getStyleClass().add("line");
    ProgressBar bar = new ProgressBar();
    bar.progressProperty().bind(doing.share());
    Label what = Controls.label("hint");
    what.setId("doing");
    doing.what().subscribe(step -> what.setText(step.isEmpty() ? "" : words.apply(step)));
    Texts own = Texts.of(DoingView.class, texts.locale());
    getChildren().addAll(bar, what, Controls.button(own, "stop.it", doing::stop));
    doing.shown().subscribe(shown -> Controls.shown(this, shown));
  }
}
