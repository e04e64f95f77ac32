package org.siltbench.labels.label;

import java.io.IOException;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.siltbench.labels.PaperProblem;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.RoleWords;
import org.siltbench.labels.code.CodeGrid;
import org.siltbench.labels.code.Codes;
import org.siltbench.labels.code.Dots;
import org.siltbench.labels.draw.Ink;
import org.siltbench.labels.draw.Page;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Type;
import org.siltbench.labels.media.Calibration;
import org.siltbench.labels.media.Form;
import org.siltbench.labels.media.Media;

/** Draws a run of labels on its stock, a page at a time. */
public final class LabelDrawing {

  private static final Type ID = new Type(true, 9, Ink.BLACK);
  private static final double BOX_LINE = 0.2;
  private static final double LEAST_SMALL = 4.6;
  private static final double NARROW = 18;

  private final Paper paper;
  private final LabelRun run;
  private final Media media;
  private final Dots dots;
  private final double width;
  private final double height;
  private final List<CodeGrid> codes;
  private final LabelPlan bagPlan;
  private final LabelPlan slipPlan;

  private LabelDrawing(Paper paper, LabelRun run) {
    this.paper = paper;
    this.run = run;
    this.media = run.media();
    this.dots = new Dots(run.dpi());
    Calibration c = media.calibration();
    this.width = media.labelWidth() * c.scaleAcross() - 2 * media.safe();
    this.height = media.labelHeight() * c.scaleDown() - 2 * media.safe();
    this.codes =
        run.labels().stream().map(label -> Codes.encode(run.kind(), label.code())).toList();
    this.bagPlan = plan(false);
    this.slipPlan = run.slip() ? plan(true) : bagPlan;
  }

  /** Draws every label of the run. */
  public static void draw(Paper paper, LabelRun run) throws IOException {
    if (run.labels().isEmpty()) {
      throw new PaperProblem(PapersSay.NO_LABEL.with(), PapersSay.CHOOSE_WEIGHED.with());
    }
    new LabelDrawing(paper, run).drawAll();
  }

  private LabelPlan plan(boolean slip) {
    LabelPlan plan = LabelPlan.of(need(slip), width, height);
    if (plan == null) {
      throw new PaperProblem(
          PapersSay.NO_FIT.with(
              run.kind().word(),
              media.name(),
              String.format(Locale.ROOT, "%.1f", media.labelWidth()),
              String.format(Locale.ROOT, "%.1f", media.labelHeight()),
              run.dpi()),
          PapersSay.NOTHING_PRINTED.with(),
          PapersSay.LARGER_LABELS.with(),
          null);
    }
    return plan;
  }

  private LabelPlan.Need need(boolean slip) {
    double one = 0;
    double two = 0;
    double mass = 0;
    boolean practice = false;
    for (BagLabel label : run.labels()) {
      one = Math.max(one, ems(Grouping.lines(label.id(), 1)));
      two = Math.max(two, ems(Grouping.lines(label.id(), 2)));
      mass = Math.max(mass, ems(List.of(label.mass())));
      practice |= label.practice();
    }
    CodeGrid largest = Collections.max(codes, Comparator.comparingInt(CodeGrid::columns));
    return new LabelPlan.Need(largest, one, two, mass, practice, slip, dots);
  }

  private double ems(List<String> lines) {
    double widest = 0;
    for (String line : lines) {
      widest = Math.max(widest, paper.width(line, ID) / ID.size());
    }
    return widest;
  }

  private void drawAll() throws IOException {
    Page page = null;
    int position = media.form() == Form.SHEET ? run.startAt() - 1 : 0;
    for (int i = 0; i < run.labels().size(); i++) {
      for (int twin = 0; twin <= (run.slip() ? 1 : 0); twin++) {
        if (page == null || position == media.perPage()) {
          position = page == null ? position : 0;
          page = nextPage(page);
        }
        draw(page, position++, i, twin == 1);
      }
    }
  }

  private Page nextPage(@Nullable Page last) throws IOException {
    if (last != null) {
      last.finish();
    }
    return paper.page(media.pageWidth(), media.pageHeight());
  }

  private void draw(Page page, int position, int index, boolean slip) throws IOException {
    Calibration c = media.calibration();
    double x = media.leftOf(position) * c.scaleAcross() + c.moveRight() + media.safe();
    double y = media.topOf(position) * c.scaleDown() + c.moveDown() + media.safe();
    BagLabel label = run.labels().get(index);
    LabelPlan plan = slip ? slipPlan : bagPlan;
    CodeGrid grid = codes.get(index);
    double module = plan.moduleDots() * dots.dot();
    int quiet = grid.kind().quiet();
    if (grid.kind().isBars()) {
      page.code(grid, x + quiet * module, y, plan.moduleDots(), dots, plan.codeHeight());
      words(page, x, y + plan.codeHeight() + LabelPlan.GAP, width, label, plan, slip);
    } else {
      page.code(grid, x + quiet * module, y + quiet * module, plan.moduleDots(), dots, 0);
      double left = x + plan.codeWidth() + LabelPlan.GAP;
      words(page, left, y, width - plan.codeWidth() - LabelPlan.GAP, label, plan, slip);
    }
    boxes(page, x, y + plan.zone() + LabelPlan.GAP, plan);
  }

  private void words(
      Page page, double x, double y, double w, BagLabel label, LabelPlan plan, boolean slip)
      throws IOException {
    Type type = ID.at(plan.points());
    double line = plan.lineHeight();
    double base = y + type.capital() + 0.2;
    for (String text : Grouping.lines(label.id(), plan.idLines())) {
      page.text(x, base, text, type);
      base += line;
    }
    page.text(x, base, label.mass(), type);
    double top = base + type.size() * 0.28 + LabelPlan.BAND_GAP;
    info(page, x, top, w, label, plan, slip);
    if (label.practice()) {
      double next = top + plan.bandHeight() + LabelPlan.BAND_GAP;
      band(page, x, next, w, plan, "PRACTICE", "");
    }
  }

  private void info(
      Page page, double x, double top, double w, BagLabel label, LabelPlan plan, boolean slip)
      throws IOException {
    String revision = "rev " + label.revision();
    String words = slip ? "SLIP" : RoleWords.of(label.role(), label.duplicate());
    if (!words.isEmpty()) {
      band(page, x, top, w, plan, words, w < NARROW ? "r" + label.revision() : revision);
      return;
    }
    Type small = fitted(label.batch() + "   " + revision, w, plan, new Type(false, 6, Ink.BLACK));
    double base = top + plan.bandHeight() / 2 + small.capital() / 2;
    double room = w - paper.width("  " + revision, small);
    page.text(x, base, paper.shortened(label.batch(), small, room), small);
    page.textRight(x + w, base, revision, small);
  }

  private void band(
      Page page, double x, double top, double w, LabelPlan plan, String words, String right)
      throws IOException {
    double tall = plan.bandHeight();
    page.box(x, top, w, tall, Ink.BLACK);
    double inset = Math.min(0.8, w / 20);
    String both = right.isEmpty() ? words : words + "   " + right;
    Type type = fitted(both, w - 2 * inset, plan, new Type(true, 6, Ink.WHITE));
    double base = top + tall / 2 + type.capital() / 2;
    page.text(x + inset, base, words, type);
    page.textRight(x + w - inset, base, right, type);
  }

  private Type fitted(String text, double w, LabelPlan plan, Type type) {
    double points = Math.min(plan.points() * 0.78, 11);
    double needed = paper.width(text, type.at(points));
    return type.at(needed > w ? Math.max(LEAST_SMALL, points * w / needed) : points);
  }

  private void boxes(Page page, double x, double top, LabelPlan plan) throws IOException {
    if (plan.rows().isEmpty()) {
      return;
    }
    double tall = plan.pitch() * plan.rows().size();
    double inset = BOX_LINE / 2;
    page.frame(x + inset, top, width - BOX_LINE, tall - inset, 0, BOX_LINE, Ink.BLACK);
    double y = top;
    for (List<WriteIn> row : plan.rows()) {
      if (y > top) {
        page.line(x, y, x + width, y, BOX_LINE, Ink.BLACK);
      }
      row(page, x, y, plan.pitch(), row);
      y += plan.pitch();
    }
  }

  private void row(Page page, double x, double y, double h, List<WriteIn> row) throws IOException {
    Type caption = new Type(false, 5.2, Ink.BLACK);
    double least = row.stream().mapToDouble(WriteIn::least).sum();
    double left = x;
    for (WriteIn field : row) {
      double w = field.least() * width / least;
      if (left > x) {
        page.line(left, y, left, y + h, BOX_LINE, Ink.BLACK);
      }
      page.text(left + 0.7, y + 0.6 + caption.capital(), field.caption(), caption);
      page.textRight(left + w - 0.9, y + h - 1, field.unit(), caption.at(6));
      left += w;
    }
  }
}
