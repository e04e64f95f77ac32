package org.siltbench.labels.draw;

import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;
import org.siltbench.labels.code.CodeGrid;
import org.siltbench.labels.code.Dots;

/** One page, drawn in millimetres from its top left corner. */
public final class Page {

  private static final double POINTS_PER_MM = 72 / 25.4;

  /** A circle's control points lie this far along the tangent, as a part of the radius. */
  private static final double ROUND = 0.5523;

  private final Paper paper;
  private final PDPage page;
  private final PDPageContentStream stream;
  private final double width;
  private final double height;
  private float fill = -1;
  private float stroke = -1;
  private float lineWidth = -1;

  Page(Paper paper, PDDocument document, double width, double height) throws IOException {
    this.paper = paper;
    this.width = width;
    this.height = height;
    this.page = new PDPage(new PDRectangle(points(width), points(height)));
    document.addPage(page);
    this.stream = new PDPageContentStream(document, page, AppendMode.OVERWRITE, true);
  }

  public double width() {
    return width;
  }

  public double height() {
    return height;
  }

  public Paper paper() {
    return paper;
  }

  /** Sets a line of text with its left end at x and its base line at y. */
  public void text(double x, double y, String text, Type type) throws IOException {
    if (text.isEmpty()) {
      return;
    }
    Typeface face = paper.face(type.bold());
    boolean marked = mark();
    ink(type.ink());
    stream.beginText();
    stream.setFont(face.font(), (float) type.points());
    stream.newLineAtOffset(points(x), up(y));
    stream.showText(face.settable(text));
    stream.endText();
    unmark(marked);
  }

  public void textRight(double x, double y, String text, Type type) throws IOException {
    text(x - paper.width(text, type), y, text, type);
  }

  public void textCentre(double x, double y, String text, Type type) throws IOException {
    text(x - paper.width(text, type) / 2, y, text, type);
  }

  /** Sets text along a slope about a point, as an artifact. */
  public void textSloped(double x, double y, double degrees, String text, Type type)
      throws IOException {
    Typeface face = paper.face(type.bold());
    double half = paper.width(text, type) / 2;
    boolean marked = markArtifact();
    ink(type.ink());
    stream.beginText();
    stream.setFont(face.font(), (float) type.points());
    Matrix at = Matrix.getRotateInstance(Math.toRadians(degrees), points(x), up(y));
    at.concatenate(Matrix.getTranslateInstance(-points(half), -points(type.capital() / 2)));
    stream.setTextMatrix(at);
    stream.showText(face.settable(text));
    stream.endText();
    unmark(marked);
  }

  /** A straight line of the given thickness in millimetres. */
  public void line(double x1, double y1, double x2, double y2, double thick, Ink ink)
      throws IOException {
    boolean marked = markArtifact();
    pen(thick, ink);
    stream.moveTo(points(x1), up(y1));
    stream.lineTo(points(x2), up(y2));
    stream.stroke();
    unmark(marked);
  }

  /** A dashed line. */
  public void dashed(double x1, double y1, double x2, double y2, double thick, Ink ink)
      throws IOException {
    stream.setLineDashPattern(new float[] {points(0.9), points(0.7)}, 0);
    line(x1, y1, x2, y2, thick, ink);
    stream.setLineDashPattern(new float[] {}, 0);
  }

  /** A filled box. */
  public void box(double x, double y, double w, double h, Ink ink) throws IOException {
    boolean marked = markArtifact();
    ink(ink);
    stream.addRect(points(x), up(y + h), points(w), points(h));
    stream.fill();
    unmark(marked);
  }

  /** The outline of a box; corners rounded by a radius, 0 for none. */
  public void frame(double x, double y, double w, double h, double r, double thick, Ink ink)
      throws IOException {
    boolean marked = markArtifact();
    pen(thick, ink);
    if (r <= 0) {
      stream.addRect(points(x), up(y + h), points(w), points(h));
    } else {
      roundedPath(x, y, w, h, r);
    }
    stream.stroke();
    unmark(marked);
  }

  private void roundedPath(double x, double y, double w, double h, double r) throws IOException {
    double k = r * (1 - ROUND);
    stream.moveTo(points(x + r), up(y));
    stream.lineTo(points(x + w - r), up(y));
    curve(x + w - k, y, x + w, y + k, x + w, y + r);
    stream.lineTo(points(x + w), up(y + h - r));
    curve(x + w, y + h - k, x + w - k, y + h, x + w - r, y + h);
    stream.lineTo(points(x + r), up(y + h));
    curve(x + k, y + h, x, y + h - k, x, y + h - r);
    stream.lineTo(points(x), up(y + r));
    curve(x, y + k, x + k, y, x + r, y);
    stream.closePath();
  }

  private void curve(double x1, double y1, double x2, double y2, double x3, double y3)
      throws IOException {
    stream.curveTo(points(x1), up(y1), points(x2), up(y2), points(x3), up(y3));
  }

  /** A disc, or its outline where hollow. */
  public void disc(double x, double y, double radius, boolean hollow) throws IOException {
    boolean marked = markArtifact();
    roundedPath(x - radius, y - radius, 2 * radius, 2 * radius, radius);
    paint(hollow);
    unmark(marked);
  }

  /** A closed shape through points (x, y, x, y …), or its outline where hollow. */
  public void polygon(boolean hollow, double... xy) throws IOException {
    boolean marked = markArtifact();
    stream.moveTo(points(xy[0]), up(xy[1]));
    for (int i = 2; i < xy.length; i += 2) {
      stream.lineTo(points(xy[i]), up(xy[i + 1]));
    }
    stream.closePath();
    paint(hollow);
    unmark(marked);
  }

  private void paint(boolean hollow) throws IOException {
    if (hollow) {
      ink(Ink.WHITE);
      pen(0.25, Ink.BLACK);
      stream.fillAndStroke();
    } else {
      ink(Ink.BLACK);
      stream.fill();
    }
  }

  /**
   * A code with its first module near (x, y), quiet zone not included: moved to the printer's
   * nearest dot, each module a whole number of dots.
   *
   * @param tall the height of bars in millimetres; other codes ignore it
   */
  public void code(CodeGrid grid, double x, double y, int dotsPerModule, Dots dots, double tall)
      throws IOException {
    double left = dots.snap(x);
    double top = dots.snap(y);
    double module = dotsPerModule * dots.dot();
    double rowHeight = grid.kind().isBars() ? dots.snap(tall) : module;
    boolean marked = mark();
    ink(Ink.BLACK);
    for (int run = 0; run < grid.runs(); run++) {
      stream.addRect(
          points(left + grid.columnOf(run) * module),
          up(top + (grid.rowOf(run) + 1) * rowHeight),
          points(grid.lengthOf(run) * module),
          points(rowHeight));
    }
    stream.fill();
    unmark(marked);
  }

  /** No more will be drawn here. */
  public void finish() throws IOException {
    stream.close();
    paper.forget(this);
  }

  private boolean mark() throws IOException {
    Structure structure = paper.structure();
    if (structure == null || paper.isDecorating() || structure.openType().equals("Document")) {
      return markArtifact();
    }
    stream.beginMarkedContent(COSName.getPDFName(structure.openType()), structure.claim(page));
    return true;
  }

  private boolean markArtifact() throws IOException {
    if (paper.structure() == null) {
      return false;
    }
    stream.beginMarkedContent(COSName.ARTIFACT);
    return true;
  }

  private void unmark(boolean marked) throws IOException {
    if (marked) {
      stream.endMarkedContent();
    }
  }

  private void ink(Ink ink) throws IOException {
    if (fill != ink.level()) {
      fill = ink.level();
      stream.setNonStrokingColor(fill);
    }
  }

  private void pen(double thick, Ink ink) throws IOException {
    float wanted = points(thick);
    if (lineWidth != wanted) {
      lineWidth = wanted;
      stream.setLineWidth(wanted);
    }
    if (stroke != ink.level()) {
      stroke = ink.level();
      stream.setStrokingColor(stroke);
    }
  }

  private static float points(double mm) {
    return (float) (mm * POINTS_PER_MM);
  }

  private float up(double y) {
    return (float) ((height - y) * POINTS_PER_MM);
  }
}
