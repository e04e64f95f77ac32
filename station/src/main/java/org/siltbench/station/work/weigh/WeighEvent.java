package org.siltbench.station.work.weigh;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.siltbench.balance.Reading;
import org.siltbench.balance.stable.PanEvent;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.said.Words;

/** What happens while weighing goes on, told to whoever shows it. */
public sealed interface WeighEvent {

  /** The balance shows this now. */
  record Live(Reading reading) implements WeighEvent {}

  /** What the reading means for the pan. */
  record OnPan(PanEvent event) implements WeighEvent {}

  /** Put this on the pan. */
  record Place(PanLoad what) implements WeighEvent {}

  /** Take off what lies on the pan. */
  record TakeOff() implements WeighEvent {}

  /** Something settled on the pan that nobody had asked for; it is not recorded. */
  record Unasked(String digits, String unit) implements WeighEvent {}

  /** It is on the disk. */
  record Recorded(Entry entry, Measured measured) implements WeighEvent {}

  /** A rule of the job said no; nothing is recorded for it. */
  record Declined(String what, Words why, @Nullable Measured measured) implements WeighEvent {}

  /** Something that does not stop the work but must be known. */
  record Warned(Words what) implements WeighEvent {}

  /** A line the format does not take. */
  record Unreadable(String raw, String why) implements WeighEvent {}

  /** Nothing has come from the balance for this long. */
  record Silent(Duration since) implements WeighEvent {}

  /** The link went away. */
  record LinkLost(String why) implements WeighEvent {}

  /** The link came back. */
  record LinkBack(String where) implements WeighEvent {}
}
