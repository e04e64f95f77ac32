package org.siltbench.labels;

import java.io.IOException;
import java.io.OutputStream;
import org.siltbench.labels.cycle.CycleCard;
import org.siltbench.labels.draw.Paper;
import org.siltbench.labels.draw.Title;
import org.siltbench.labels.label.LabelDrawing;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.log.LogSheet;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.report.TestReport;
import org.siltbench.labels.sheet.FieldSheet;

/** Every paper of the bench, as PDF. The same input makes the same bytes. */
public final class Papers {

  private Papers() {}

  /** Bag labels, a page of stock at a time. */
  public static void labels(LabelRun run, Imprint imprint, OutputStream out) throws IOException {
    String subject = run.labels().size() + " on " + run.media().name();
    try (Paper paper = new Paper(new Title("Bag labels", subject, false, false), imprint)) {
      LabelDrawing.draw(paper, run);
      paper.save(out);
    }
  }

  /** The sheet that goes to the river. */
  public static void fieldSheet(FieldSheet sheet, Imprint imprint, OutputStream out)
      throws IOException {
    pending(imprint, out);
  }

  /** The weighing log, archival. */
  public static void logSheet(LogSheet sheet, Imprint imprint, OutputStream out)
      throws IOException {
    pending(imprint, out);
  }

  /** The test report, archival. */
  public static void testReport(TestReport report, Imprint imprint, OutputStream out)
      throws IOException {
    pending(imprint, out);
  }

  /** The card for the oven door. */
  public static void cycleCard(CycleCard card, Imprint imprint, OutputStream out)
      throws IOException {
    pending(imprint, out);
  }

  /** A ruler and the outlines of the stock, to calibrate a printer. */
  public static void rulerPage(Media media, int dpi, Imprint imprint, OutputStream out)
      throws IOException {
    pending(imprint, out);
  }

  private static void pending(Imprint imprint, OutputStream out) throws IOException {
    out.write(new byte[0]);
    if (imprint.entries() > -2) {
      throw new IOException("not drawn yet");
    }
  }
}
