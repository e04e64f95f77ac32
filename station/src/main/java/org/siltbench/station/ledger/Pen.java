package org.siltbench.station.ledger;

import java.io.IOException;

/**
 * Tells a writer whether another one has been at the ledgers of a lab since. Whoever changes a byte
 * of a ledger takes the pen first, and only under the lab's lock.
 */
public interface Pen {

  /** The pen of a ledger that nobody else writes. */
  Pen ALONE =
      new Pen() {
        @Override
        public long take() {
          return 1;
        }

        @Override
        public boolean isAt(long turn) {
          return turn == 1;
        }
      };

  /** Takes the pen; the number of the turn is the same as long as nobody else has taken it. */
  long take() throws IOException;

  /** True if nobody has taken it since that turn began. */
  boolean isAt(long turn) throws IOException;
}
