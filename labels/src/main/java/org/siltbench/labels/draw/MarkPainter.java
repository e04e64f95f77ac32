package org.siltbench.labels.draw;

import java.io.IOException;
import java.util.List;
import org.siltbench.labels.chart.Mark;

/** Draws a chart's marks on a page. */
public final class MarkPainter {

  private MarkPainter() {}

  /** Draws marks with their box's top left corner at (x, y). */
  public static void paint(Page page, double x, double y, List<Mark> marks) throws IOException {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Line line) {
        line(page, x, y, line);
      } else if (mark instanceof Mark.Dot dot) {
        dot(page, x + dot.x(), y + dot.y(), dot.size() / 2, dot.shape());
      } else if (mark instanceof Mark.Words words) {
        words(page, x + words.x(), y + words.y(), words);
      }
    }
  }

  private static void line(Page page, double x, double y, Mark.Line line) throws IOException {
    double thick =
        switch (line.weight()) {
          case HAIR -> 0.1;
          case RULE -> 0.2;
          case STROKE -> 0.32;
        };
    Ink ink = line.weight() == Mark.Weight.HAIR ? Ink.RULE : Ink.BLACK;
    double x1 = x + line.x1();
    double y1 = y + line.y1();
    if (line.dashed()) {
      page.dashed(x1, y1, x + line.x2(), y + line.y2(), thick, ink);
    } else {
      page.line(x1, y1, x + line.x2(), y + line.y2(), thick, ink);
    }
  }

  private static void dot(Page page, double x, double y, double r, Mark.Shape shape)
      throws IOException {
    double s = 0.86 * r;
    double d = 1.2 * r;
    switch (shape) {
      case DISC, RING -> page.disc(x, y, r, shape == Mark.Shape.RING);
      case SQUARE, FRAME ->
          page.polygon(
              shape == Mark.Shape.FRAME, x - s, y - s, x + s, y - s, x + s, y + s, x - s, y + s);
      case DIAMOND, KITE ->
          page.polygon(shape == Mark.Shape.KITE, x, y - d, x + d, y, x, y + d, x - d, y);
    }
  }

  private static void words(Page page, double x, double y, Mark.Words words) throws IOException {
    Type type = new Type(false, words.size(), Ink.BLACK);
    switch (words.anchor()) {
      case LEFT -> page.text(x, y, words.text(), type);
      case CENTRE -> page.textCentre(x, y, words.text(), type);
      case RIGHT -> page.textRight(x, y, words.text(), type);
    }
  }
}
