package org.siltbench.station.register;

import org.jspecify.annotations.Nullable;

/** The register cannot be used; it is to be thrown away and made anew from the ledgers. */
public final class RegisterFailed extends RuntimeException {

  private static final long serialVersionUID = 1L;

  RegisterFailed(String message, @Nullable Throwable cause) {
    super(message, cause);
  }
}
