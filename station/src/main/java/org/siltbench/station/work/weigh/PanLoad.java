package org.siltbench.station.work.weigh;

import org.siltbench.calc.quantity.Mass;

/** What a person is asked to put on the pan. */
public sealed interface PanLoad {

  /** A filter; the note says which dish, or why once more. */
  record OfFilter(String id, String note) implements PanLoad {
    @Override
    public String text() {
      return note.isEmpty() ? id : id + " (" + note + ')';
    }
  }

  /** A check weight. */
  record OfWeight(String name, Mass mass) implements PanLoad {
    @Override
    public String text() {
      return "weight " + name;
    }
  }

  /** A filter nobody knows. */
  record Loose() implements PanLoad {
    @Override
    public String text() {
      return "the loose filter";
    }
  }

  /** In words. */
  String text();
}
