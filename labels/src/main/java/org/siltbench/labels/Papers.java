package org.siltbench.labels;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.siltbench.labels.chart.Mark;
import org.siltbench.labels.code.Dots;
import org.siltbench.labels.cycle.CycleCard;
import org.siltbench.labels.cycle.CycleDrawing;
import org.siltbench.labels.draw.MarkPainter;
import org.siltbench.labels.draw.Page;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Title;
import org.siltbench.labels.label.LabelDrawing;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.label.RulerDrawing;
import org.siltbench.labels.log.LogDrawing;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.report.ReportDrawing;
import org.siltbench.labels.report.TestReport;
import org.siltbench.labels.sheet.FieldDrawing;
import org.siltbench.labels.sheet.FieldSheet;

/** Every paper of the bench, as PDF. The same input makes the same bytes. */
public final class Papers {

  private Papers() {}

  /** Bag labels, a page of stock at a time. */
  public static void labels(LabelRun run, Imprint imprint, OutputStream out) throws IOException {
    String subject = run.labels().size() + " on " + run.media().name();
    Title title = new Title("Bag labels", subject, false, false);
    write(title, imprint, out, paper -> LabelDrawing.draw(paper, run));
  }

  /** The sheet that goes to the river. */
  public static void fieldSheet(FieldSheet sheet, Imprint imprint, OutputStream out)
      throws IOException {
    Title title = new Title("Field sheet, batch " + sheet.batch(), sheet.batchName(), false, true);
    write(title, imprint, out, paper -> FieldDrawing.draw(paper, sheet));
  }

  /** The weighing log, archival. */
  public static void logSheet(LogSheet sheet, Imprint imprint, OutputStream out)
      throws IOException {
    Title title = new Title("Weighing log, batch " + sheet.batch(), sheet.batchName(), true, true);
    write(title, imprint, out, paper -> LogDrawing.draw(paper, sheet));
  }

  /** The test report, archival. */
  public static void testReport(TestReport report, Imprint imprint, OutputStream out)
      throws IOException {
    Title title = new Title("Test report " + report.number(), report.parameter(), true, true);
    write(title, imprint, out, paper -> ReportDrawing.draw(paper, report));
  }

  /** The card for the oven door. */
  public static void cycleCard(CycleCard card, Imprint imprint, OutputStream out)
      throws IOException {
    Title title = new Title("Drying cycle " + card.cycle(), card.purpose(), false, true);
    write(title, imprint, out, paper -> CycleDrawing.draw(paper, card));
  }

  /** A ruler and the outlines of the stock, to calibrate a printer. */
  public static void rulerPage(Media media, int dpi, Imprint imprint, OutputStream out)
      throws IOException {
    Title title = new Title("Ruler for " + media.name(), "dots per inch: " + dpi, false, false);
    write(title, imprint, out, paper -> RulerDrawing.draw(paper, media, new Dots(dpi)));
  }

  private interface Drawing {
    void on(Paper paper) throws IOException;
  }

  private static void write(Title title, Imprint imprint, OutputStream out, Drawing drawing)
      throws IOException {
    try (Paper paper = new Paper(title, imprint)) {
      drawing.on(paper);
      paper.save(out);
    }
  }

  /** One picture on a page of its own size, millimetres. */
  public static void picture(
      String title,
      List<Mark> marks,
      double width,
      double height,
      Imprint imprint,
      OutputStream out)
      throws IOException {
    try (Paper paper = new Paper(new Title(title, title, false, false), imprint)) {
      Page page = paper.page(width, height);
      MarkPainter.paint(page, 0, 0, marks);
      page.finish();
      paper.save(out);
    }
  }
}
