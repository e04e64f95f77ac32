package org.siltbench.labels.label;

import java.io.IOException;
import java.util.Locale;
import org.siltbench.labels.code.Dots;
import org.siltbench.labels.draw.Ink;
import org.siltbench.labels.draw.Page;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Type;
import org.siltbench.labels.media.Calibration;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.media.Ruler;

/**
 * Draws the page that calibrates a printer: two rulers that start at a cross, and the outline of
 * every label. What is measured on the print goes into the media file.
 */
public final class RulerDrawing {

  private final Page page;
  private final Media media;
  private final Dots dots;
  private final Ruler ruler;

  private RulerDrawing(Page page, Media media, Dots dots) {
    this.page = page;
    this.media = media;
    this.dots = dots;
    this.ruler = Ruler.of(media);
  }

  public static void draw(Paper paper, Media media, Dots dots) throws IOException {
    Page page = paper.page(media.pageWidth(), media.pageHeight());
    RulerDrawing drawing = new RulerDrawing(page, media, dots);
    drawing.outlines();
    drawing.rulers();
    drawing.numbers();
    drawing.words();
    page.finish();
  }

  private void outlines() throws IOException {
    Calibration c = media.calibration();
    for (int i = 0; i < media.perPage(); i++) {
      double x = media.leftOf(i) * c.scaleAcross() + c.moveRight();
      double y = media.topOf(i) * c.scaleDown() + c.moveDown();
      page.frame(
          x,
          y,
          media.labelWidth() * c.scaleAcross(),
          media.labelHeight() * c.scaleDown(),
          media.corner(),
          0.1,
          Ink.RULE);
    }
  }

  private double across(double x) {
    Calibration c = media.calibration();
    return dots.snap(x * c.scaleAcross() + c.moveRight());
  }

  private double down(double y) {
    Calibration c = media.calibration();
    return dots.snap(y * c.scaleDown() + c.moveDown());
  }

  private void rulers() throws IOException {
    double x0 = ruler.left();
    double y0 = ruler.top();
    double wide = ruler.across();
    double tall = ruler.down();
    page.line(across(x0), down(y0), across(x0 + wide), down(y0), 0.15, Ink.BLACK);
    page.line(across(x0), down(y0), across(x0), down(y0 + tall), 0.15, Ink.BLACK);
    for (int mm = 0; mm <= wide; mm++) {
      page.line(across(x0 + mm), down(y0), across(x0 + mm), down(y0 + tick(mm)), 0.1, Ink.BLACK);
    }
    for (int mm = 0; mm <= tall; mm++) {
      page.line(across(x0), down(y0 + mm), across(x0 + tick(mm)), down(y0 + mm), 0.1, Ink.BLACK);
    }
  }

  private static double tick(int mm) {
    if (mm % 10 == 0) {
      return 3;
    }
    return mm % 5 == 0 ? 2 : 1.2;
  }

  /** Every second centimetre is numbered, clear of the ticks. */
  private void numbers() throws IOException {
    double x0 = ruler.left();
    double y0 = ruler.top();
    Type tiny = new Type(false, 5.5, Ink.BLACK);
    for (int mm = 20; mm <= ruler.across(); mm += 20) {
      page.textCentre(across(x0 + mm), down(y0) - 0.8, Integer.toString(mm), tiny);
    }
    for (int mm = 20; mm <= ruler.down(); mm += 20) {
      page.textRight(across(x0) - 0.8, down(y0 + mm) + 0.7, Integer.toString(mm), tiny);
    }
  }

  private void words() throws IOException {
    double x0 = ruler.left();
    double y0 = ruler.top();
    Type small = new Type(false, media.pageWidth() < 80 ? 4.6 : 8, Ink.BLACK);
    String[] lines = {
      "ruler: " + mm(ruler.across()) + " mm across, " + mm(ruler.down()) + " mm down",
      "cross: " + mm(x0) + " mm from the left edge, " + mm(y0) + " mm from the top",
    };
    double y = down(y0) + 3.4 + small.leading();
    for (String line : lines) {
      page.text(across(x0) + 4, y, line, small);
      y += small.leading();
    }
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
