package org.siltbench.station.work.exchange;

import java.util.List;

/** What is said of columns that are left out or whose numbers become others. */
final class HeadingNotes {

  private HeadingNotes() {}

  static void of(List<Heading> headings, List<String> notes) {
    for (Heading heading : headings) {
      if (heading.column().equals(Columns.NONE) && !heading.name().isEmpty()) {
        notes.add("Column \"" + heading.name() + "\" is left out.");
      } else if (heading.converts()) {
        notes.add(
            "Column \""
                + heading.name()
                + "\" is in "
                + heading.unit()
                + "; it is taken in as "
                + Units.choices(heading.column()).get(0)
                + ".");
      }
    }
  }
}
