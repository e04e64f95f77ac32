package org.siltbench.station.window.strip;

import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import org.siltbench.station.work.live.Trace;

/** Draws the last minute; its colours are those of the look. */
final class TraceView extends Region {

  private final Canvas canvas = new Canvas();
  private final Region ink = new Region();
  private final Region band = new Region();

  TraceView() {
    getStyleClass().add("trace");
    ink.getStyleClass().add("trace-ink");
    band.getStyleClass().add("trace-band");
    ink.setOpacity(0); // an invisible node would get no colour from the sheet
    band.setOpacity(0);
    getChildren().addAll(ink, band, canvas);
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    ink.resize(1, 1);
    band.resize(1, 1);
  }

  void draw(Trace.Picture picture) {
    GraphicsContext g = canvas.getGraphicsContext2D();
    double w = canvas.getWidth();
    double h = canvas.getHeight();
    g.clearRect(0, 0, w, h);
    if (!Double.isNaN(picture.low())) {
      g.setFill(colour(band));
      g.fillRect(0, h - picture.high() * h, w, (picture.high() - picture.low()) * h);
    }
    g.setStroke(colour(ink));
    g.setLineWidth(Math.max(1.5, h / 45));
    picture.lines().forEach(line -> stroke(g, line, w, h));
  }

  private static void stroke(GraphicsContext g, List<Trace.Point> line, double w, double h) {
    g.beginPath();
    boolean first = true;
    for (Trace.Point point : line) {
      double x = point.x() * w;
      double y = h - point.y() * h;
      if (first) {
        g.moveTo(x, y);
        first = false;
      } else {
        g.lineTo(x, y);
      }
    }
    g.stroke();
  }

  private static Color colour(Region of) {
    return of.getBackground() != null
            && !of.getBackground().getFills().isEmpty()
            && of.getBackground().getFills().get(0).getFill() instanceof Color color
        ? color
        : Color.GRAY;
  }
}
