package org.siltbench.station.work.postweigh;

import org.jspecify.annotations.Nullable;

/** Where scans come from, one at a time and only when asked for. */
public interface Ids {

  /** Asks for the next scan; it must not be read before. */
  void ask();

  /** The answer once it is there; null while it is awaited. */
  @Nullable Answer poll();

  /**
   * What came.
   *
   * @param text the scan
   * @param end true at the end of all; there is no scan then
   */
  record Answer(String text, boolean end) {

    /** The end of all. */
    public static final Answer END = new Answer("", true);

    /** A scan. */
    public static Answer of(String text) {
      return new Answer(text, false);
    }
  }
}
