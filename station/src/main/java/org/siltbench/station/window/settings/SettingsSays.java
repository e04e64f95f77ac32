package org.siltbench.station.window.settings;

import org.siltbench.station.said.Code;

/** What is said here; the sentences stand in the bundle {@code says} beside it. */
enum SettingsSays implements Code {
  FOLDER_UNREADABLE,
  FORMAT_UNREADABLE,
  FOLDER_NOT_MADE,
  PINS_DIFFER
}
