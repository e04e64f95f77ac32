package org.siltbench.station.bench;

import java.io.IOException;
import org.siltbench.station.ledger.LabLock;

/** The lab's lock, taken once however deep the work asks for it. Lives on the bench's thread. */
final class Guard {

  /** Work on files. */
  interface Work<T> {
    T run() throws IOException;
  }

  private final LabLock lock;
  private boolean held;

  Guard(LabLock lock) {
    this.lock = lock;
  }

  <T> T locked(Work<T> work) throws IOException {
    if (held) {
      return work.run();
    }
    try (LabLock.Held taken = lock.hold()) {
      held = true;
      return work.run();
    } finally {
      held = false;
    }
  }
}
