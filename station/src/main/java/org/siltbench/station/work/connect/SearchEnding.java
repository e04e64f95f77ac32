package org.siltbench.station.work.connect;

import org.siltbench.balance.find.Attempt;
import org.siltbench.balance.link.LinkSpec;

/** How a search for a balance ended; {@link SearchWords} has the sentences. */
public sealed interface SearchEnding {

  /**
   * Readable lines came.
   *
   * @param spec the link text that gave them
   * @param heard the evidence
   * @param needsNoFormat true if every line reads as a mass without a line format
   */
  record Found(LinkSpec spec, Attempt heard, boolean needsNoFormat) implements SearchEnding {}

  /** Only the ports were listed. */
  record Listed() implements SearchEnding {}

  /** This machine has no serial port. */
  record NoPort() implements SearchEnding {}

  /** No port could be opened. */
  record NoneOpened() implements SearchEnding {}

  /** Not a byte came. */
  record Silent() implements SearchEnding {}

  /** Bytes came, but no setting made lines of them. */
  record Unreadable() implements SearchEnding {}

  /** A person stopped it. */
  record Cancelled() implements SearchEnding {}
}
