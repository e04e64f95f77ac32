package org.siltbench.balance.link;

import com.fazecast.jSerialComm.SerialPort;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import org.siltbench.balance.BalanceSays;
import org.siltbench.balance.LinkException;
import org.siltbench.balance.Timebase;

/**
 * An open serial port. No event listener is used: after an unplug it would storm. The first failed
 * read is final.
 */
final class SerialConnection implements Connection {

  private static final long LOOK_NANOS = 500_000_000L;

  /** How long a quiet port is left alone between two looks: little at first, then longer. */
  private static final long SHORTEST_NANOS = 50_000L;

  private static final long LONGEST_NANOS = 5_000_000L;

  private final SerialPort port;
  private final PortLock lock;
  private final String realPath;
  private final Timebase time;
  private final Object reading = new Object();
  private final AtomicBoolean closed = new AtomicBoolean();
  private boolean lost;
  private long lookedAt;

  SerialConnection(SerialPort port, PortLock lock, String realPath, Timebase time) {
    this.port = port;
    this.lock = lock;
    this.realPath = realPath;
    this.time = time;
    this.lookedAt = time.nanos();
  }

  @Override
  public int read(byte[] into, long atMostNanos) throws IOException, InterruptedException {
    long deadline = time.nanos() + atMostNanos;
    long pause = SHORTEST_NANOS;
    do {
      int count = readOnce(into);
      if (count > 0) {
        return count;
      }
      LockSupport.parkNanos(pause);
      pause = Math.min(2 * pause, LONGEST_NANOS);
      if (Thread.interrupted()) {
        throw new InterruptedException("reading " + realPath);
      }
    } while (time.nanos() - deadline < 0);
    return 0;
  }

  /**
   * What has come, without waiting for more. The system's own waiting read is not used: its time
   * limit is a setting of the terminal, and one that is lost makes it wait for ever.
   */
  private int readOnce(byte[] into) throws IOException {
    synchronized (reading) {
      if (lost || closed.get()) {
        throw new LinkException((lost ? BalanceSays.GONE : BalanceSays.CLOSED).with(realPath));
      }
      int count = port.bytesAvailable();
      if (count > 0) {
        count = port.readBytes(into, Math.min(count, into.length));
      }
      lost = count < 0 || (count == 0 && isGone());
      if (lost) {
        throw new LinkException(BalanceSays.CABLE_OUT.with(realPath));
      }
      return count;
    }
  }

  /** A quiet port whose file has gone will stay quiet for ever. */
  private boolean isGone() {
    long now = time.nanos();
    if (now - lookedAt < LOOK_NANOS) {
      return false;
    }
    lookedAt = now;
    return realPath.startsWith("/") && !Files.exists(Path.of(realPath));
  }

  @Override
  public void write(byte[] bytes) throws IOException {
    if (port.writeBytes(bytes, bytes.length) != bytes.length) {
      throw new LinkException(BalanceSays.NOT_SENT.with(realPath));
    }
  }

  @Override
  public String where() {
    return realPath;
  }

  @Override
  public void close() throws IOException {
    if (closed.compareAndSet(false, true)) {
      synchronized (reading) {
        port.closePort();
        lock.close();
      }
    }
  }
}
