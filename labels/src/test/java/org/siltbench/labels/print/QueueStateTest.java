package org.siltbench.labels.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.awt.print.PageFormat;
import org.junit.jupiter.api.Test;
import org.siltbench.labels.media.MediaCatalog;
import org.siltbench.labels.print.PrintOutcome.Why;

class QueueStateTest {

  private static final String IDLE =
      "printer label is idle.  enabled since Wed Nov 25 10:21:19 2026\n\tAlerts: none";
  private static final String ACCEPTS = "label accepting requests since Wed Nov 25 10:21:19 2026";

  @Test
  void anIdleQueueWorks() {
    assertNull(QueueState.standsStill(IDLE, ACCEPTS));
  }

  /** Reason words of RFC 8011, section 5.4.12. */
  @Test
  void reasonsOfTheStandardAreUnderstood() {
    assertEquals(Why.OUT_OF_PAPER, state("media-empty-error"));
    assertEquals(Why.OUT_OF_PAPER, state("media-needed"));
    assertEquals(Why.JAMMED, state("media-jam-error"));
    assertEquals(Why.OFFLINE, state("connecting-to-device"));
    assertEquals(Why.OFFLINE, state("offline-report"));
    assertEquals(Why.OTHER, state("cover-open"));
    assertNull(state("marker-supply-low-report"));
  }

  private static Why state(String alert) {
    return QueueState.standsStill(IDLE.replace("none", alert), ACCEPTS);
  }

  @Test
  void anEmptyTrayTellsMoreThanAPausedQueue() {
    String both =
        "printer label disabled since Wed -\n\treason\n\tAlerts: media-empty-error paused";
    assertEquals(Why.OUT_OF_PAPER, QueueState.standsStill(both, ACCEPTS));
    assertEquals(
        Why.PAUSED, QueueState.standsStill(both.replace("media-empty-error ", ""), ACCEPTS));
  }

  @Test
  void theSizeIsToldInMillimetres() {
    assertEquals("Custom.50x25mm", LabelPrinter.size(MediaCatalog.find("roll-50x25")));
    assertEquals("Custom.210x297mm", LabelPrinter.size(MediaCatalog.find("sheet-a4-63.5x38")));
  }

  @Test
  void javasOwnPrintingGetsTheExactSizeUpright() {
    PageFormat format = JavaPrint.format(MediaCatalog.find("roll-50x25"));
    assertEquals(141.73, format.getWidth(), 0.01);
    assertEquals(70.87, format.getHeight(), 0.01);
    assertEquals(PageFormat.PORTRAIT, format.getOrientation());
  }
}
