package org.siltbench.station.work.weigh;

import org.siltbench.calc.quantity.Mass;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** What a person is asked to put on the pan. */
public sealed interface PanLoad {

  /** A filter; the note says which dish, or why once more. */
  record OfFilter(String id, Words note) implements PanLoad {

    /** A filter in this dish; empty for none. */
    public static OfFilter in(String id, String dish) {
      return new OfFilter(id, dish.isEmpty() ? Words.none() : Said.of(WeighSays.DISH, dish));
    }

    @Override
    public Words words() {
      return note.isEmpty() ? Words.verbatim(id) : Said.of(WeighSays.LOAD_NOTED, id, note);
    }
  }

  /** A check weight. */
  record OfWeight(String name, Mass mass) implements PanLoad {
    @Override
    public Words words() {
      return Said.of(WeighSays.LOAD_WEIGHT, name);
    }
  }

  /** A filter nobody knows. */
  record Loose() implements PanLoad {
    @Override
    public Words words() {
      return Said.of(WeighSays.LOAD_LOOSE);
    }
  }

  /** In any language. */
  Words words();

  /** In words. */
  default String text() {
    return words().english();
  }
}
