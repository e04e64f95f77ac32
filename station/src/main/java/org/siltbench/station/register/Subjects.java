package org.siltbench.station.register;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.siltbench.station.ledger.Entry;

/**
 * What the register needs to know of the work: which subjects an entry touches, and how a subject's
 * history folds into one row. Both are pure functions, so that live order and rebuild order give
 * the same register.
 */
public interface Subjects {

  /** The version of these functions; a change means the register is made anew. */
  int version();

  /** The subjects an effective entry (corrections applied) is about. */
  Set<Subject> of(Entry effective);

  /** Folds a history, oldest first in merge order, into the row that lists show. */
  Optional<StateRow> fold(Subject subject, List<Entry> history);

  /**
   * What an entry changes in other entries: a correction or a swap names them with the fields it
   * sets. Empty for all other kinds.
   */
  List<Amendment> amendments(Entry entry);
}
