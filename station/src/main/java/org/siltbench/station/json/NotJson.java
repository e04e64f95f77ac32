package org.siltbench.station.json;

import org.jspecify.annotations.Nullable;

/** The text is not the JSON that was expected; the message says where. */
public final class NotJson extends Exception {

  private static final long serialVersionUID = 1L;

  NotJson(String message, @Nullable Throwable cause) {
    super(message, cause);
  }
}
