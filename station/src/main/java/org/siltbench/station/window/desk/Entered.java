package org.siltbench.station.window.desk;

import org.siltbench.station.Problem;
import org.siltbench.station.work.scan.BagScan;

/** What a person types in place of a scan goes the way of a scan. */
public final class Entered {

  private static final String ABOUT = "scan";

  private Entered() {}

  /** Hands it to the screen; what is of no use there is refused with the reason. */
  public static void take(Desk desk, ScanTaker screen, String text) {
    desk.notices().clear(ABOUT);
    BagScan bag;
    try {
      bag = BagScan.of(text);
    } catch (Problem.Refused e) {
      if (!screen.scannedOther(text)) {
        desk.notices().show(ABOUT, e);
        desk.cues().give(Cues.Cue.REFUSED);
      }
      return;
    }
    if (!bag.hint().isEmpty()) {
      desk.notices().show(Notice.note(ABOUT, bag.hint().in(desk.locale())));
    }
    screen.scanned(bag);
  }
}
