package org.siltbench.station.fault;

/** The moment the power goes: whatever was going on ends here. */
public final class PowerCut extends RuntimeException {

  private static final long serialVersionUID = 1L;

  PowerCut() {
    super("power cut", null, false, false);
  }
}
