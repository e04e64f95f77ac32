package org.siltbench.balance;

import java.time.Instant;
import org.siltbench.calc.reason.Reason;

/** What can come out of a {@link ReadingSource}. */
public sealed interface SourceEvent {

  /** A parsed line. */
  record Read(Reading reading) implements SourceEvent {}

  /** A line that the format does not take; never a mass. */
  record Unreadable(String raw, Reason reason, long nanos, Instant at) implements SourceEvent {
    /** Why it does not take it, in English. */
    public String why() {
      return reason.english();
    }
  }

  /** The link went away; the source goes on trying unless it says {@link Ended}. */
  record Lost(Reason reason, long nanos, Instant at) implements SourceEvent {
    /** How it went away, in English. */
    public String why() {
      return reason.english();
    }
  }

  /** The link came back, perhaps under another name. */
  record Back(String where, long nanos, Instant at) implements SourceEvent {}

  /** Nothing arrived within the time asked for. */
  record Quiet(long nanos, Instant at) implements SourceEvent {}

  /** No more will come: the end of a replay, or a link given up. */
  record Ended(Reason reason, long nanos, Instant at) implements SourceEvent {
    /** Why no more will come, in English. */
    public String why() {
      return reason.english();
    }
  }
}
