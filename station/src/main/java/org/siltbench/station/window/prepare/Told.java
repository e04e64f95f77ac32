package org.siltbench.station.window.prepare;

import org.siltbench.station.Problem;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Desk;
import org.siltbench.station.window.desk.Notice;

/** How this screen tells of what was done and what was refused. */
final class Told {

  static final String ABOUT = "prepare";

  private final Desk desk;

  Told(Desk desk) {
    this.desk = desk;
  }

  void clear() {
    desk.notices().clear(ABOUT);
  }

  /** It is recorded. */
  void done(String what) {
    desk.changed();
    made(what);
  }

  /** It is made; nothing new stands in the ledger. */
  void made(String what) {
    desk.notices().show(Notice.note(ABOUT, what));
    desk.cues().give(Cues.Cue.RECORDED);
  }

  void refuse(Problem problem) {
    desk.notices().show(ABOUT, problem);
    desk.cues().give(Cues.Cue.REFUSED);
  }
}
