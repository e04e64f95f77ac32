package org.siltbench.station.work.live;

import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.ReadingSource;
import org.siltbench.balance.SourceEvent;

/** One listener at the live balance, pulled by a thread of its own. */
final class Ear implements ReadingSource {

  /** An hour of a fast balance: whoever is that late must settle the load anew. */
  private static final int MOST = 36_000;

  private final LiveBalance balance;
  private final BlockingQueue<SourceEvent> heard = new LinkedBlockingQueue<>(MOST);

  Ear(LiveBalance balance) {
    this.balance = balance;
  }

  void hear(SourceEvent event, long nanos, Instant at) {
    if (!heard.offer(event)) {
      heard.clear();
      heard.add(new SourceEvent.Lost(BalanceSays.BENCH_BUSY.with(), nanos, at));
      heard.add(event);
    }
  }

  /** The live stream says by itself, a few times a second, when nothing came. */
  @Override
  public SourceEvent next(Duration atMost) throws InterruptedException {
    return heard.take();
  }

  @Override
  public String describe() {
    return balance.describe();
  }

  @Override
  public String formatName() {
    return balance.formatName();
  }

  @Override
  public void close() {
    balance.leave(this);
  }
}
