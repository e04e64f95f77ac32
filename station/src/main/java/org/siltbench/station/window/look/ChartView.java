package org.siltbench.station.window.look;

import java.util.List;
import java.util.stream.Collectors;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Background;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.chart.Mark;
import org.siltbench.station.work.chart.Strokes;

/**
 * Draws the marks of a chart on the screen: the same geometry as on paper, in the colours of the
 * look. A millimetre of the paper is a part of an em here, so charts grow with the window.
 */
public final class ChartView extends Region {

  /** Lays a chart out in a box of millimetres. */
  public interface Sketch {
    /** Its marks. */
    List<Mark> marks(double width, double height);
  }

  private static final double MM_PER_EM = 2.9;

  private final Canvas canvas = new Canvas();
  private final Region ink = new Region();
  private final Region hair = new Region();
  private @Nullable Sketch sketch;

  /** An empty chart. */
  public ChartView() {
    getStyleClass().add("chart-box");
    ink.getStyleClass().add("chart-ink");
    hair.getStyleClass().add("chart-hair");
    ink.setVisible(false);
    hair.setVisible(false);
    getChildren().addAll(ink, hair, canvas);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    ink.backgroundProperty().addListener(look -> draw());
    hair.backgroundProperty().addListener(look -> draw());
  }

  /** Shows a chart; its name is read to who cannot see it. */
  public void show(@Nullable Sketch what, String name) {
    sketch = what;
    setAccessibleText(name);
    draw();
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    ink.resize(1, 1);
    hair.resize(1, 1);
    draw();
  }

  private void draw() {
    GraphicsContext g = canvas.getGraphicsContext2D();
    g.setTransform(1, 0, 0, 1, 0, 0);
    g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    Sketch now = sketch;
    if (now == null || canvas.getWidth() < 1 || canvas.getHeight() < 1) {
      return;
    }
    double pad = em() / 2;
    double scale = em() / MM_PER_EM;
    g.setTransform(scale, 0, 0, scale, pad, pad);
    double width = (canvas.getWidth() - 2 * pad) / scale;
    double height = (canvas.getHeight() - 2 * pad) / scale;
    List<Mark> marks = now.marks(width, height);
    marks.forEach(mark -> draw(g, mark));
    setAccessibleHelp(words(marks));
  }

  /** All that is written in it, to be read to who cannot see it. */
  private static String words(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Words.class::isInstance)
        .map(mark -> ((Mark.Words) mark).text())
        .collect(Collectors.joining("; "));
  }

  /** The width of an em, px; the ink's sheet makes it one wide. */
  private double em() {
    return ink.getPrefWidth() > 1 ? ink.getPrefWidth() : Font.getDefault().getSize();
  }

  private void draw(GraphicsContext g, Mark mark) {
    if (mark instanceof Mark.Line line) {
      line(g, line);
    } else if (mark instanceof Mark.Dot dot) {
      dot(g, dot);
    } else if (mark instanceof Mark.Words words) {
      words(g, words);
    }
  }

  private void line(GraphicsContext g, Mark.Line line) {
    g.setStroke(colour(line.weight() == Mark.Weight.HAIR ? hair : ink));
    g.setLineWidth(Math.max(Strokes.width(line.weight()), 0.16));
    if (line.dashed()) {
      g.setLineDashes(Strokes.DASH, Strokes.GAP);
    } else {
      g.setLineDashes((double[]) null);
    }
    g.strokeLine(line.x1(), line.y1(), line.x2(), line.y2());
  }

  private void dot(GraphicsContext g, Mark.Dot dot) {
    double half = dot.size() / 2;
    boolean hollow = Strokes.hollow(dot.shape());
    g.setLineDashes((double[]) null);
    g.setLineWidth(Strokes.OUTLINE);
    g.setStroke(colour(ink));
    g.setFill(hollow ? paper() : colour(ink));
    g.beginPath();
    switch (dot.shape()) {
      case DISC, RING -> g.arc(dot.x(), dot.y(), half, half, 0, 360);
      case SQUARE, FRAME -> g.rect(dot.x() - half, dot.y() - half, dot.size(), dot.size());
      case DIAMOND, KITE -> {
        g.moveTo(dot.x(), dot.y() - half);
        g.lineTo(dot.x() + half, dot.y());
        g.lineTo(dot.x(), dot.y() + half);
        g.lineTo(dot.x() - half, dot.y());
        g.closePath();
      }
    }
    g.fill();
    if (hollow) {
      g.stroke();
    }
  }

  private void words(GraphicsContext g, Mark.Words words) {
    g.setFill(colour(ink));
    g.setFont(Font.font(words.size() * Strokes.MM_PER_POINT));
    g.setTextBaseline(VPos.BASELINE);
    g.setTextAlign(
        switch (words.anchor()) {
          case LEFT -> TextAlignment.LEFT;
          case CENTRE -> TextAlignment.CENTER;
          case RIGHT -> TextAlignment.RIGHT;
        });
    g.fillText(words.text(), words.x(), words.y());
  }

  private Color paper() {
    return colour(this);
  }

  private static Color colour(Region of) {
    Background look = of.getBackground();
    if (look == null || look.getFills().isEmpty()) {
      return Color.GRAY;
    }
    Paint top = look.getFills().get(look.getFills().size() - 1).getFill();
    return top instanceof Color color ? color : Color.GRAY;
  }
}
