package org.siltbench.station.life;

import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** The statuses of a filter; the code on disk is {@link #code()}, never the ordinal. */
public enum Status {
  PLANNED("planned"),
  PRE_WEIGHED("pre-weighed"),
  ISSUED("issued"),
  RECEIVED("received"),
  DRYING("drying"),
  POST_WEIGHED("post-weighed"),
  CONSTANT("constant"),
  REPORTED("reported"),
  REJECTED("rejected");

  private final String code;

  Status(String code) {
    this.code = code;
  }

  /** The stable word for disk and scripts. */
  public String code() {
    return code;
  }

  /** The word for a person. */
  public Words words() {
    return Said.of(LifeSays.valueOf("STATUS_" + name()));
  }

  /** The word for a person of a code; what is no status is told as it stands. */
  public static Words words(String code) {
    for (Status status : values()) {
      if (status.code.equals(code)) {
        return status.words();
      }
    }
    return Words.verbatim(code);
  }
}
