package org.siltbench.labels.media;

/** The media file: a few named lengths in millimetres, one a line. */
public final class MediaText {

  private MediaText() {}

  /**
   * Reads a media file's text.
   *
   * @param text the file's content
   * @param source what to call it in a message
   * @throws org.siltbench.labels.PaperProblem naming line, key and what was expected
   */
  public static Media parse(String text, String source) {
    throw new UnsupportedOperationException(source + text);
  }

  /** Writes stock as a media file; {@link #parse} gives the same stock back. */
  public static String write(Media media) {
    throw new UnsupportedOperationException(media.name());
  }
}
