package org.siltbench.station.fault;

import org.siltbench.station.ledger.Pen;

/** The pen of one lab, which several simulated processes take from each other. */
final class SharedPen {

  private long written;

  /** For one process. */
  Pen holder() {
    return new Pen() {
      private long turn;

      @Override
      public long take() {
        if (turn == 0 || written != turn) {
          turn = ++written;
        }
        return turn;
      }

      @Override
      public boolean isAt(long when) {
        return written == when;
      }
    };
  }
}
