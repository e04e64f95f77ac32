package org.siltbench.labels.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.AlderFork;
import org.siltbench.labels.Outside;
import org.siltbench.labels.code.CodeKind;
import org.siltbench.labels.label.LabelRun;
import org.siltbench.labels.media.MediaCatalog;

/** A real print queue takes labels at their exact size, and every way it stands still is told. */
class CupsQueueIT {

  private Cups cups;

  @BeforeEach
  void startAPrintSystem() throws Exception {
    assumeTrue(Outside.has("cupsd", "cups cups-client"), "cupsd is missing");
    assumeTrue(Outside.has("pdfinfo", "poppler-utils"), "pdfinfo is missing");
    assumeTrue("root".equals(System.getProperty("user.name")), "NOT PROVEN: cupsd needs root");
    cups = Cups.start();
  }

  @AfterEach
  void stopIt() throws Exception {
    if (cups != null) {
      cups.close();
    }
  }

  private static LabelRun run(String stock, int labels) {
    return LabelRun.of(AlderFork.labels(labels, false), MediaCatalog.find(stock));
  }

  @Test
  void aLabelComesOutAtItsExactSizeUprightAndReadable() throws Exception {
    LabelRun one = run("roll-50x25", 1);
    assertEquals(new PrintOutcome.Sent("label", 1), LabelPrinter.print(cups.lp(), "label", one));
    cups.await(() -> cups.printed().size() == 1);
    Path printed = cups.printed().get(0);
    assertSize(printed, 50 / 25.4 * 72, 25 / 25.4 * 72);
    String read = Outside.read(CodeKind.DATA_MATRIX, Outside.raster(printed, 1, 300));
    assertEquals(one.labels().get(0).code(), read);
  }

  @Test
  void manyLabelsAreOneJobWithAPageEach() throws Exception {
    assertEquals(
        new PrintOutcome.Sent("label", 30),
        LabelPrinter.print(cups.lp(), "label", run("roll-70x50", 30)));
    cups.await(() -> cups.printed().size() == 1);
    assertTrue(info(cups.printed().get(0)).contains("Pages:           30"));
  }

  @Test
  void aPausedQueueGetsNothing() throws Exception {
    cups.tell("cupsdisable", "label");
    PrintOutcome outcome = LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1));
    PrintOutcome.Waits waits = assertInstanceOf(PrintOutcome.Waits.class, outcome);
    assertEquals(PrintOutcome.Why.PAUSED, waits.why());
    assertEquals("", cups.tell("lpstat", "-o", "label").text());
    cups.tell("cupsenable", "label");
    assertInstanceOf(
        PrintOutcome.Sent.class, LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1)));
    cups.await(() -> cups.printed().size() == 1);
  }

  @Test
  void anEmptyTrayIsToldAndTheNextLabelWaits() throws Exception {
    cups.trayIsEmpty(true);
    assertInstanceOf(
        PrintOutcome.Sent.class, LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1)));
    cups.await(() -> cups.tell("lpstat", "-l", "-p", "label").text().contains("media-empty"));
    PrintOutcome outcome = LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1));
    PrintOutcome.Waits waits = assertInstanceOf(PrintOutcome.Waits.class, outcome);
    assertEquals(PrintOutcome.Why.OUT_OF_PAPER, waits.why());
    cups.trayIsEmpty(false);
    cups.await(() -> cups.printed().size() == 1);
    cups.await(() -> !cups.tell("lpstat", "-l", "-p", "label").text().contains("media-empty"));
    assertInstanceOf(
        PrintOutcome.Sent.class, LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1)));
  }

  @Test
  void aQueueThatRejectsJobsIsTold() {
    cups.tell("cupsreject", "label");
    PrintOutcome outcome = LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1));
    PrintOutcome.Waits waits = assertInstanceOf(PrintOutcome.Waits.class, outcome);
    assertEquals(PrintOutcome.Why.REJECTING, waits.why());
  }

  @Test
  void aQueueThatIsNotThereIsToldWithThoseThatAre() {
    PrintOutcome outcome = LabelPrinter.print(cups.lp(), "lable", run("roll-50x25", 1));
    PrintOutcome.Gone gone = assertInstanceOf(PrintOutcome.Gone.class, outcome);
    assertTrue(gone.next().english().contains("label"), gone.next().english());
    assertEquals(List.of("label"), LabelPrinter.queues(cups.lp()));
  }

  @Test
  void aPrintSystemThatWentAwayIsTold() throws Exception {
    cups.stop();
    assertInstanceOf(
        PrintOutcome.Gone.class, LabelPrinter.print(cups.lp(), "label", run("roll-50x25", 1)));
  }

  private static String info(Path pdf) throws Exception {
    return Outside.run("pdfinfo", pdf).out();
  }

  private static void assertSize(Path pdf, double width, double height) throws Exception {
    Matcher size = Pattern.compile("Page size:\\s+([\\d.]+) x ([\\d.]+) pts").matcher(info(pdf));
    assertTrue(size.find());
    assertEquals(width, Double.parseDouble(size.group(1)), 0.05);
    assertEquals(height, Double.parseDouble(size.group(2)), 0.05);
  }
}
