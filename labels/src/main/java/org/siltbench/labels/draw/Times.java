package org.siltbench.labels.draw;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;

/** Times as papers print them: ISO 8601 with a blank, and the offset where it matters. */
public final class Times {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
  private static final DateTimeFormatter WITH_OFFSET =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx");

  private Times() {}

  public static String minute(OffsetDateTime at) {
    return MINUTE.format(at);
  }

  public static String second(OffsetDateTime at) {
    return SECOND.format(at);
  }

  public static String withOffset(OffsetDateTime at) {
    return WITH_OFFSET.format(at);
  }
}
