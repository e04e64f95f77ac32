package org.siltbench.balance.link;

import java.io.IOException;
import java.util.Set;
import org.siltbench.balance.Timebase;

/** A way to a balance that can be connected, and connected again after it was lost. */
public interface Link {

  /** What this link can do. */
  enum Capability {
    /** Bytes can be sent to the balance. */
    SENDS,
    /** After a loss, connecting again may succeed. */
    COMES_BACK,
    /** The stream begins at the start of a line: nothing has to be thrown away. */
    STARTS_ON_A_LINE,
    /** Baud, parity and the like apply. */
    HAS_LINE_SETTINGS
  }

  /** What this link can do. */
  Set<Capability> capabilities();

  /** The link text of this link, for the record. */
  String describe();

  /** The clock by which bytes arrive here. */
  Timebase time();

  /**
   * Connects once, without trying again.
   *
   * @throws org.siltbench.balance.BalanceException with a message for the person
   */
  Connection connect() throws IOException;
}
