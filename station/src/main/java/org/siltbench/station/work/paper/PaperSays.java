package org.siltbench.station.work.paper;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum PaperSays implements Code {
  NOT_WRITTEN,
  FOLDER_NOT_MADE,
  OUT_NOT_MADE,
  PAPER_WAITS,
  NOT_DRAWN
}
