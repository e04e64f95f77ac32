package org.siltbench.labels.print;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.siltbench.calc.reason.Reason;
import org.siltbench.labels.PapersSay;
import org.siltbench.labels.print.PrintOutcome.Why;

/** What a queue says of itself, made from the print system's answers. */
final class QueueState {

  private QueueState() {}

  /**
   * Why the queue stands still, or null where it works.
   *
   * @param printer the answer to {@code lpstat -l -p QUEUE}
   * @param accepting the answer to {@code lpstat -a QUEUE}
   */
  static @Nullable Why standsStill(String printer, String accepting) {
    String all = printer.toLowerCase(Locale.ROOT);
    if (accepting.contains("not accepting")) {
      return Why.REJECTING;
    }
    Why alert = alert(all);
    if (alert != null) {
      return alert;
    }
    return all.contains(" disabled since ") ? Why.PAUSED : null;
  }

  /** Reasons as named by IPP (RFC 8011, printer-state-reasons). */
  private static @Nullable Why alert(String text) {
    if (text.contains("media-empty") || text.contains("media-needed")) {
      return Why.OUT_OF_PAPER;
    }
    if (text.contains("media-jam")) {
      return Why.JAMMED;
    }
    if (text.contains("offline")
        || text.contains("connecting-to-device")
        || text.contains("shutdown")) {
      return Why.OFFLINE;
    }
    return text.contains("-error") || text.contains("cover-open") || text.contains("door-open")
        ? Why.OTHER
        : null;
  }

  /** What to do about it. */
  static Reason next(Why why) {
    return PapersSay.valueOf("NEXT_" + why.name()).with();
  }
}
