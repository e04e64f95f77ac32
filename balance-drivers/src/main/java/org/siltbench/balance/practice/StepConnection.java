package org.siltbench.balance.practice;

import java.io.IOException;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.link.Connection;
import org.siltbench.balance.link.Pacer;

/** Reader and simulator in step: a new line is made only when the last one was taken whole. */
final class StepConnection implements Connection {

  private static final int PATIENCE = 10;

  private final PracticeBalance balance;
  private final Pipe pipe;
  private final VirtualTime time;
  private final Pacer pacer;
  private int outstanding;
  private volatile boolean closed;

  StepConnection(PracticeBalance balance, Pipe pipe, VirtualTime time, Pacer pacer) {
    this.balance = balance;
    this.pipe = pipe;
    this.time = time;
    this.pacer = pacer;
  }

  @Override
  public int read(byte[] into, long atMostNanos) throws IOException, InterruptedException {
    if (closed) {
      return END;
    }
    if (outstanding == 0 && !makeLine(time.nanos() + atMostNanos)) {
      return closed ? END : 0;
    }
    return receive(into);
  }

  /** Makes the next line if it is due before the deadline; else moves time to the deadline. */
  private boolean makeLine(long deadline) throws IOException, InterruptedException {
    long due = balance.dueNanos();
    long until = Math.min(due, deadline);
    pacer.await(until, () -> closed);
    if (due > deadline || closed) {
      time.advanceTo(until);
      return false;
    }
    byte[] line = balance.nextLine();
    pipe.send(line);
    outstanding = line.length;
    return true;
  }

  private int receive(byte[] into) throws IOException, InterruptedException {
    for (int i = 0; i < PATIENCE; i++) {
      int count = pipe.receive(into);
      if (count > 0) {
        outstanding -= count;
        return count;
      }
    }
    throw new LinkException(BalanceSays.PRACTICE_LOST.with());
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    throw new LinkException(BalanceSays.PRACTICE_TALKS.with());
  }

  @Override
  public String where() {
    return pipe.where();
  }

  @Override
  public void close() throws IOException {
    closed = true;
    pipe.close();
  }
}
