package org.siltbench.station.life;

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

  /** The stable word for disk, scripts and screen. */
  public String code() {
    return code;
  }
}
