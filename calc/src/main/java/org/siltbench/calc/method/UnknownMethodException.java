package org.siltbench.calc.method;

import java.util.List;

/** No method has this key; the message lists the nearest keys. */
public final class UnknownMethodException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<String> near;

  UnknownMethodException(String key, List<String> near) {
    super("no method \"" + key + "\"; near: " + String.join(", ", near));
    this.near = near;
  }

  /** The nearest keys, nearest first. */
  public List<String> near() {
    return near;
  }
}
