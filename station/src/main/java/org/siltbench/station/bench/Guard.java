package org.siltbench.station.bench;

import java.io.IOException;
import java.util.function.Consumer;
import org.siltbench.station.elsewhere.Elsewhere;
import org.siltbench.station.ledger.LabLock;
import org.siltbench.station.said.Said;
import org.siltbench.station.said.Words;

/** The lab's lock, taken once however deep the work asks for it. Used by one thread at a time. */
final class Guard {

  /** Work on files. */
  interface Work<T> {
    T run() throws IOException;
  }

  private final LabLock lock;
  private final Consumer<Words> notes;
  private boolean held;

  Guard(LabLock lock, Consumer<Words> notes) {
    this.lock = lock;
    this.notes = notes;
  }

  /** What was done stays done where the lock cannot be given back afterwards; that is told. */
  <T> T locked(Work<T> work) throws IOException {
    if (held) {
      return work.run();
    }
    LabLock.Held taken = lock.hold();
    held = true;
    try {
      return work.run();
    } finally {
      held = false;
      giveBack(taken);
    }
  }

  private void giveBack(LabLock.Held taken) {
    try {
      taken.close();
    } catch (IOException e) {
      notes.accept(Said.of(BenchSays.NOTE_LOCK_KEPT, Elsewhere.words(e)));
    }
  }
}
