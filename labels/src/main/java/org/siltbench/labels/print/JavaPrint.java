package org.siltbench.labels.print;

import java.awt.print.Book;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.standard.PrinterIsAcceptingJobs;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPrintable;
import org.apache.pdfbox.printing.Scaling;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.Media;
import org.siltbench.labels.print.PrintOutcome.Why;

/** Printing where the system has no {@code lp}: through Java's own print service. */
final class JavaPrint {

  private static final double POINTS_PER_MM = 72 / 25.4;

  private JavaPrint() {}

  static List<String> queues() {
    return services().stream().map(PrintService::getName).toList();
  }

  private static List<PrintService> services() {
    return Arrays.asList(PrintServiceLookup.lookupPrintServices(null, null));
  }

  static PrintOutcome print(String queue, LabelRun run) {
    for (PrintService service : services()) {
      if (service.getName().equals(queue)) {
        return print(service, run);
      }
    }
    return new PrintOutcome.Gone(
        queue, PapersSay.NO_QUEUE.with(queue), PapersSay.QUEUES.with(String.join(", ", queues())));
  }

  private static PrintOutcome print(PrintService service, LabelRun run) {
    String queue = service.getName();
    if (PrinterIsAcceptingJobs.NOT_ACCEPTING_JOBS.equals(
        service.getAttribute(PrinterIsAcceptingJobs.class))) {
      return new PrintOutcome.Waits(queue, Why.REJECTING, QueueState.next(Why.REJECTING));
    }
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    try {
      LabelPrinter.draw(run, pdf);
      try (PDDocument document = Loader.loadPDF(pdf.toByteArray())) {
        send(service, document, run.media());
      }
      return new PrintOutcome.Sent(queue, LabelPrinter.pages(run));
    } catch (PrinterException | IOException e) {
      return new PrintOutcome.Gone(queue, Reason.of(e), PapersSay.CHECK_PRINTER.with());
    }
  }

  /** An upright page format of the exact size: turned or looked-up formats come out wrong. */
  static PageFormat format(Media media) {
    Paper paper = new Paper();
    paper.setSize(media.pageWidth() * POINTS_PER_MM, media.pageHeight() * POINTS_PER_MM);
    paper.setImageableArea(0, 0, paper.getWidth(), paper.getHeight());
    PageFormat format = new PageFormat();
    format.setPaper(paper);
    format.setOrientation(PageFormat.PORTRAIT);
    return format;
  }

  private static void send(PrintService service, PDDocument document, Media media)
      throws PrinterException {
    Book book = new Book();
    PDFPrintable pages = new PDFPrintable(document, Scaling.ACTUAL_SIZE, false, 0, false);
    book.append(pages, format(media), document.getNumberOfPages());
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setPrintService(service);
    job.setPageable(book);
    job.print();
  }
}
