package org.siltbench.station.work.exchange;

import java.util.List;
import org.siltbench.station.said.Said;

/** What is said of columns that are left out or whose numbers become others. */
final class HeadingNotes {

  private HeadingNotes() {}

  static void of(List<Heading> headings, List<org.siltbench.station.said.Words> notes) {
    for (Heading heading : headings) {
      if (heading.column().equals(Columns.NONE) && !heading.name().isEmpty()) {
        notes.add(Said.of(ExchangeSays.NOTE_COLUMN_OUT, heading.name()));
      } else if (heading.converts()) {
        notes.add(
            Said.of(
                ExchangeSays.NOTE_CONVERTED,
                heading.name(),
                heading.unit(),
                Units.choices(heading.column()).get(0)));
      }
    }
  }
}
