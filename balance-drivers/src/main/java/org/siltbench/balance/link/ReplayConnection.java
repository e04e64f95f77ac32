package org.siltbench.balance.link;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.util.List;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;
import org.siltbench.balance.VirtualTime;
import org.siltbench.balance.capture.Chunk;

/** Hands out recorded bytes at their recorded times. */
final class ReplayConnection implements Connection {

  private final String where;
  private final List<Chunk> chunks;
  private final VirtualTime time;
  private final Pacer pacer;
  private final long start;
  private int nextChunk;
  private int taken;
  private volatile boolean closed;

  ReplayConnection(String where, List<Chunk> chunks, VirtualTime time, Pacer pacer) {
    this.where = where;
    this.chunks = chunks;
    this.time = time;
    this.pacer = pacer;
    this.start = time.nanos();
  }

  @Override
  public int read(byte[] into, long atMostNanos) throws InterruptedException {
    if (closed || nextChunk == chunks.size()) {
      return END;
    }
    Chunk chunk = chunks.get(nextChunk);
    long due = start + chunk.micros() * 1000;
    long deadline = time.nanos() + atMostNanos;
    long until = Math.min(due, deadline);
    pacer.await(until, () -> closed);
    time.advanceTo(until);
    return due > deadline ? 0 : hand(chunk, into);
  }

  private int hand(Chunk chunk, byte[] into) {
    int count = Math.min(into.length, chunk.text().length() - taken);
    byte[] bytes = chunk.text().substring(taken, taken + count).getBytes(ISO_8859_1);
    System.arraycopy(bytes, 0, into, 0, count);
    taken += count;
    if (taken == chunk.text().length()) {
      nextChunk++;
      taken = 0;
    }
    return count;
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    throw new LinkException(BalanceSays.RECORDING_TAKES_NOTHING.with());
  }

  @Override
  public String where() {
    return where;
  }

  @Override
  public void close() {
    closed = true;
  }
}
