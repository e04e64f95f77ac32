package org.siltbench.station.window.postweigh;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import org.siltbench.station.window.look.Shape;
import org.siltbench.station.work.postweigh.SeriesPicture;

/** The masses after each drying, as dots that should come to lie level. */
final class SeriesView extends Pane {

  private static final double MARGIN = 0.14;

  private SeriesPicture picture = new SeriesPicture(List.of());

  SeriesView() {
    getStyleClass().add("series");
  }

  void show(SeriesPicture other) {
    picture = other;
    draw();
    requestLayout();
  }

  private void draw() {
    getChildren().clear();
    for (int i = 0; i < picture.points().size(); i++) {
      SeriesPicture.Point point = picture.points().get(i);
      if (i > 0) {
        getChildren().add(line(picture.points().get(i - 1), point));
      }
    }
    picture.points().forEach(this::mark);
  }

  private Line line(SeriesPicture.Point from, SeriesPicture.Point to) {
    Line line = new Line();
    line.getStyleClass().add("series-line");
    line.startXProperty().bind(widthProperty().multiply(x(from)));
    line.startYProperty().bind(heightProperty().multiply(y(from)));
    line.endXProperty().bind(widthProperty().multiply(x(to)));
    line.endYProperty().bind(heightProperty().multiply(y(to)));
    return line;
  }

  private void mark(SeriesPicture.Point point) {
    Region dot = Shape.DOT.node("series-dot");
    dot.layoutXProperty()
        .bind(widthProperty().multiply(x(point)).subtract(dot.widthProperty().divide(2)));
    dot.layoutYProperty()
        .bind(heightProperty().multiply(y(point)).subtract(dot.heightProperty().divide(2)));
    Label grams = new Label(point.grams());
    grams.getStyleClass().add("series-grams");
    grams
        .layoutXProperty()
        .bind(widthProperty().multiply(x(point)).subtract(grams.widthProperty().divide(2)));
    grams.layoutYProperty().bind(heightProperty().multiply(y(point)).add(dot.heightProperty()));
    getChildren().addAll(dot, grams);
  }

  private static double x(SeriesPicture.Point point) {
    return MARGIN + point.x() * (1 - 2 * MARGIN);
  }

  private static double y(SeriesPicture.Point point) {
    return 0.68 - point.y() * 0.5;
  }
}
