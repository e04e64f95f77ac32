package org.siltbench.station.ledger;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.Problem;

/**
 * The lock of one lab folder. The lock file is opened once in this process, however often the lab
 * is opened: on POSIX systems closing a second channel would release the lock of the first. Byte 0
 * is held while appending, byte 1 by the process that owns the register file. After them stands the
 * number of the pen's turn; it need not survive a power cut, which ends every process.
 */
public final class LabLock implements AutoCloseable, Pen {

  private static final int TURN_AT = 8;

  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(60);
  private static final Map<Path, Shared> OPEN = new HashMap<>();

  private final Shared shared;
  private @Nullable FileLock register;
  private final ByteBuffer number = ByteBuffer.allocateDirect(Long.BYTES);
  private long turn;
  private boolean closed;

  private LabLock(Shared shared) {
    this.shared = shared;
  }

  /** Opens the lock of a lab folder that exists. */
  public static LabLock of(Path folder) throws IOException {
    Path path = folder.toRealPath().resolve("lab.lock");
    synchronized (OPEN) {
      Shared shared = OPEN.get(path);
      if (shared == null) {
        shared = new Shared(path);
        OPEN.put(path, shared);
      }
      shared.users++;
      return new LabLock(shared);
    }
  }

  /** Takes the lock for appending; waits for other threads and processes. */
  public Held hold() throws IOException {
    return shared.take();
  }

  @Override
  public long take() throws IOException {
    long now = written();
    if (turn == 0 || now != turn) {
      turn = Math.max(1, now + 1);
      number.clear().putLong(turn).flip();
      if (shared.channel.write(number, TURN_AT) != Long.BYTES) {
        throw new IOException("the lock file took only part of what was written");
      }
    }
    return turn;
  }

  @Override
  public boolean isAt(long turn) throws IOException {
    return written() == turn;
  }

  private long written() throws IOException {
    number.clear();
    return shared.channel.read(number, TURN_AT) == Long.BYTES ? number.flip().getLong() : 0;
  }

  /** Tries to become the owner of the register file until this is closed. */
  public boolean ownRegister() throws IOException {
    synchronized (OPEN) {
      if (shared.registerTaken) {
        return false;
      }
      register = shared.channel.tryLock(1, 1, false);
      shared.registerTaken = register != null;
      return shared.registerTaken;
    }
  }

  @Override
  public void close() throws IOException {
    synchronized (OPEN) {
      if (closed) {
        return;
      }
      closed = true;
      if (register != null) {
        register.release();
        shared.registerTaken = false;
      }
      shared.users--;
      if (shared.users == 0) {
        OPEN.remove(shared.path);
        shared.channel.close();
      }
    }
  }

  /** The lock, held. */
  public interface Held extends AutoCloseable {
    @Override
    void close() throws IOException;
  }

  private static final class Shared {
    final Path path;
    final FileChannel channel;
    final ReentrantLock threads = new ReentrantLock(true);
    int users;
    boolean registerTaken;

    Shared(Path path) throws IOException {
      this.path = path;
      this.channel = FileChannel.open(path, Set.of(CREATE, READ, WRITE), OwnerOnly.file(path));
    }

    Held take() throws IOException {
      threads.lock();
      try {
        FileLock lock = waitForOthers();
        return () -> {
          try {
            lock.release();
          } finally {
            threads.unlock();
          }
        };
      } catch (IOException | RuntimeException e) {
        threads.unlock();
        throw e;
      }
    }

    private FileLock waitForOthers() throws IOException {
      long start = System.nanoTime();
      FileLock lock = channel.tryLock(0, 1, false);
      while (lock == null) {
        if (System.nanoTime() - start > PATIENCE) {
          throw new Problem.Outside(null, LedgerSays.LOCK_HELD);
        }
        LockSupport.parkNanos(200_000);
        lock = channel.tryLock(0, 1, false);
      }
      return lock;
    }
  }
}
