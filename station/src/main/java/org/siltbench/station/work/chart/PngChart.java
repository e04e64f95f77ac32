package org.siltbench.station.work.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.siltbench.labels.chart.Mark;

/** Marks as a PNG picture, 10 dots a millimetre. */
public final class PngChart {

  private static final double DOTS_PER_MM = 10;

  private final Graphics2D ink;

  private PngChart(Graphics2D ink) {
    this.ink = ink;
  }

  /** Writes the picture. */
  public static void write(List<Mark> marks, double width, double height, OutputStream out)
      throws IOException {
    BufferedImage image =
        new BufferedImage(dots(width), dots(height), BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D ink = image.createGraphics();
    try {
      ink.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      ink.setRenderingHint(
          RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
      ink.setColor(Color.WHITE);
      ink.fillRect(0, 0, image.getWidth(), image.getHeight());
      ink.scale(DOTS_PER_MM, DOTS_PER_MM);
      marks.forEach(new PngChart(ink)::draw);
    } finally {
      ink.dispose();
    }
    if (!ImageIO.write(image, "png", out)) {
      throw new IOException("this Java cannot write PNG pictures");
    }
  }

  private static int dots(double mm) {
    return (int) Math.ceil(mm * DOTS_PER_MM);
  }

  private void draw(Mark mark) {
    if (mark instanceof Mark.Line line) {
      line(line);
    } else if (mark instanceof Mark.Dot dot) {
      dot(dot);
    } else if (mark instanceof Mark.Words words) {
      words(words);
    }
  }

  private void line(Mark.Line line) {
    ink.setColor(line.weight() == Mark.Weight.HAIR ? Color.GRAY : Color.BLACK);
    float width = (float) Strokes.width(line.weight());
    ink.setStroke(
        line.dashed()
            ? new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {1.2f, 0.8f}, 0)
            : new BasicStroke(width));
    ink.draw(new Line2D.Double(line.x1(), line.y1(), line.x2(), line.y2()));
  }

  private void dot(Mark.Dot dot) {
    Shape shape = shape(dot, dot.size() / 2);
    if (Strokes.hollow(dot.shape())) {
      ink.setColor(Color.WHITE);
      ink.fill(shape);
      ink.setColor(Color.BLACK);
      ink.setStroke(new BasicStroke(0.3f));
      ink.draw(shape);
    } else {
      ink.setColor(Color.BLACK);
      ink.fill(shape);
    }
  }

  private static Shape shape(Mark.Dot dot, double half) {
    double left = dot.x() - half;
    double top = dot.y() - half;
    return switch (dot.shape()) {
      case DISC, RING -> new Ellipse2D.Double(left, top, dot.size(), dot.size());
      case SQUARE, FRAME -> new Rectangle2D.Double(left, top, dot.size(), dot.size());
      case DIAMOND, KITE -> diamond(dot, half);
    };
  }

  private static Shape diamond(Mark.Dot dot, double half) {
    Path2D path = new Path2D.Double();
    path.moveTo(dot.x(), dot.y() - half);
    path.lineTo(dot.x() + half, dot.y());
    path.lineTo(dot.x(), dot.y() + half);
    path.lineTo(dot.x() - half, dot.y());
    path.closePath();
    return path;
  }

  private void words(Mark.Words words) {
    ink.setColor(Color.BLACK);
    ink.setFont(
        new Font(Font.SANS_SERIF, Font.PLAIN, 1)
            .deriveFont((float) (words.size() * Strokes.MM_PER_POINT)));
    double wide =
        ink.getFont().getStringBounds(words.text(), ink.getFontRenderContext()).getWidth();
    double left =
        switch (words.anchor()) {
          case LEFT -> words.x();
          case CENTRE -> words.x() - wide / 2;
          case RIGHT -> words.x() - wide;
        };
    ink.drawString(words.text(), (float) left, (float) words.y());
  }
}
