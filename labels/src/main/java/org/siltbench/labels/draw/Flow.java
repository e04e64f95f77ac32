package org.siltbench.labels.draw;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.siltbench.labels.Imprint;

/** Text and tables that run down a page and over to the next, with heads and feet. */
public final class Flow {

  private static final double SIDE = 15;
  private static final double TOP = 14;
  private static final double BOTTOM = 17;
  private static final double GUTTER = 6;

  /** A heading is not left alone at the foot of a page. */
  private static final double HEADING_WITH_MORE = 28;

  private final Paper paper;
  private final Imprint imprint;
  private final String running;
  private final double pageWidth;
  private final double pageHeight;
  private final List<Page> pages = new ArrayList<>();
  private Page page;
  private double y;

  private Flow(Paper paper, String running, double pageWidth, double pageHeight)
      throws IOException {
    this.paper = paper;
    this.imprint = paper.imprint();
    this.running = running;
    this.pageWidth = pageWidth;
    this.pageHeight = pageHeight;
    this.page = blank();
    this.y = TOP;
  }

  /** Upright pages of the imprint's size. */
  public static Flow upright(Paper paper, String running) throws IOException {
    Imprint.PageSize size = paper.imprint().page();
    return new Flow(paper, running, size.width(), size.height());
  }

  /** Pages turned sideways. */
  public static Flow sideways(Paper paper, String running) throws IOException {
    Imprint.PageSize size = paper.imprint().page();
    return new Flow(paper, running, size.height(), size.width());
  }

  private Page blank() throws IOException {
    Page next = paper.page(pageWidth, pageHeight);
    pages.add(next);
    if (imprint.practice()) {
      double slope = Math.toDegrees(Math.atan2(pageHeight, pageWidth));
      Type ghost = new Type(true, 96, Ink.GHOST);
      next.textSloped(pageWidth / 2, pageHeight / 2, slope, "PRACTICE", ghost);
    }
    return next;
  }

  public Paper paper() {
    return paper;
  }

  public Page page() {
    return page;
  }

  public double left() {
    return SIDE;
  }

  public double right() {
    return pageWidth - SIDE;
  }

  public double width() {
    return pageWidth - 2 * SIDE;
  }

  /** Where the next thing begins. */
  public double y() {
    return y;
  }

  public Flow down(double mm) {
    y += mm;
    return this;
  }

  public boolean fits(double tall) {
    return y + tall <= pageHeight - BOTTOM;
  }

  /** Goes to a new page unless a height still fits. */
  public Flow keep(double tall) throws IOException {
    if (!fits(tall)) {
      newPage();
    }
    return this;
  }

  public Flow newPage() throws IOException {
    page = blank();
    y = TOP;
    paper.decorate(
        () -> {
          page.text(left(), y + 2, running, Type.SMALL.strong().in(Ink.BLACK));
          page.line(left(), y + 3.6, right(), y + 3.6, 0.12, Ink.RULE);
        });
    y += 7;
    return this;
  }

  /** The document's title, with a word at the right. */
  public Flow title(String text, String aside) throws IOException {
    paper.begin(StandardStructureTypes.H1);
    page.text(left(), y + Type.TITLE.capital(), text, Type.TITLE);
    paper.end();
    paper.begin(StandardStructureTypes.P);
    page.textRight(right(), y + Type.TITLE.capital(), aside, Type.HEADING);
    paper.end();
    y += Type.TITLE.capital() + 2.6;
    page.line(left(), y, right(), y, 0.7, Ink.BLACK);
    return down(3.2);
  }

  public Flow heading(String text) throws IOException {
    keep(HEADING_WITH_MORE);
    y += 3.4;
    paper.begin(StandardStructureTypes.H2);
    page.text(left(), y + Type.HEADING.capital(), text, Type.HEADING);
    paper.end();
    return down(Type.HEADING.capital() + 1.9);
  }

  public Flow paragraph(String text) throws IOException {
    return paragraph(text, Type.BODY, left(), width());
  }

  public Flow paragraph(String text, Type type, double x, double w) throws IOException {
    List<String> lines = Lines.wrap(paper, text, type, w);
    keep(Math.min(lines.size(), 30) * type.leading());
    paper.begin(StandardStructureTypes.P);
    for (String line : lines) {
      if (!fits(type.leading())) {
        newPage();
      }
      page.text(x, y + type.capital() + 0.2, line, type);
      y += type.leading();
    }
    paper.end();
    return down(1.2);
  }

  /** A numbered or marked item with a hanging indent. */
  public Flow item(String mark, String text) throws IOException {
    double indent = 6;
    keep(Lines.wrap(paper, text, Type.BODY, width() - indent).size() * Type.BODY.leading());
    paper.begin(StandardStructureTypes.P);
    page.text(left(), y + Type.BODY.capital() + 0.2, mark, Type.STRONG);
    paper.end();
    return paragraph(text, Type.BODY, left() + indent, width() - indent);
  }

  /** Named facts in columns; empty ones are left out. */
  public Flow facts(int columns, String... namesAndValues) throws IOException {
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      if (!namesAndValues[i + 1].isEmpty()) {
        shown.add(namesAndValues[i]);
        shown.add(namesAndValues[i + 1]);
      }
    }
    double w = (width() - (columns - 1) * GUTTER) / columns;
    for (int i = 0; i < shown.size(); i += 2 * columns) {
      factRow(shown.subList(i, Math.min(shown.size(), i + 2 * columns)), w);
    }
    return this;
  }

  private void factRow(List<String> row, double w) throws IOException {
    int most = 1;
    for (int i = 1; i < row.size(); i += 2) {
      most = Math.max(most, Lines.wrap(paper, row.get(i), Type.BODY, w).size());
    }
    double tall = Type.SMALL.leading() + most * Type.BODY.leading() + 1.4;
    keep(tall);
    double x = left();
    for (int i = 0; i < row.size(); i += 2) {
      fact(x, w, row.get(i), row.get(i + 1));
      x += w + GUTTER;
    }
    y += tall;
  }

  private void fact(double x, double w, String name, String value) throws IOException {
    paper.begin(StandardStructureTypes.P);
    page.text(x, y + Type.SMALL.capital() + 0.3, name, Type.SMALL);
    double base = y + Type.SMALL.leading() + Type.BODY.capital() + 0.3;
    for (String line : Lines.wrap(paper, value, Type.BODY, w)) {
      page.text(x, base, line, Type.BODY);
      base += Type.BODY.leading();
    }
    paper.end();
  }

  public Flow table(Table table) throws IOException {
    new TableSetter(this, table).set();
    return down(2);
  }

  /** Lines to sign on, side by side. */
  public Flow signatures(String... captions) throws IOException {
    keep(20);
    y += 13;
    double w = (width() - (captions.length - 1) * GUTTER) / captions.length;
    double x = left();
    for (String caption : captions) {
      page.line(x, y, x + w, y, 0.2, Ink.BLACK);
      paper.begin(StandardStructureTypes.P);
      page.text(x, y + 3, caption, Type.SMALL);
      paper.end();
      x += w + GUTTER;
    }
    return down(6);
  }

  /** Sets the feet, now that the number of pages is known. */
  public void finish() throws IOException {
    for (int i = 0; i < pages.size(); i++) {
      Page each = pages.get(i);
      String count = "page " + (i + 1) + " of " + pages.size();
      paper.decorate(() -> foot(each, count));
      each.finish();
    }
  }

  private void foot(Page each, String count) throws IOException {
    double top = pageHeight - 12;
    each.line(left(), top, right(), top, 0.12, Ink.RULE);
    String made = imprint.lab() + "  ·  bench " + imprint.bench() + "  ·  printed ";
    each.text(left(), top + 3.4, made + Times.withOffset(imprint.printed()), Type.SMALL);
    each.textRight(right(), top + 3.4, count, Type.SMALL.strong().in(Ink.BLACK));
    String head = imprint.head();
    if (head != null) {
      String pin = "ledger head " + head + " after " + imprint.entries() + " entries";
      each.text(left(), top + 6.4, pin, Type.SMALL.at(5.6));
    }
    if (imprint.practice()) {
      each.textRight(right(), top + 6.4, "PRACTICE", Type.SMALL.strong().in(Ink.BLACK));
    }
  }
}
