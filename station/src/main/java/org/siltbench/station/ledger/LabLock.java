package org.siltbench.station.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
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
  private Disk.@Nullable Lock register;
  private final ByteBuffer number = ByteBuffer.allocate(Long.BYTES);
  private long turn;
  private boolean closed;

  private LabLock(Shared shared) {
    this.shared = shared;
  }

  /** Opens the lock of a lab folder that exists. */
  public static LabLock of(Path folder) throws IOException {
    return of(folder, new RealDisk());
  }

  /** The same; the file is opened on this disk, unless this process has it open. */
  public static LabLock of(Path folder, Disk disk) throws IOException {
    Path path = folder.toRealPath().resolve("lab.lock");
    synchronized (OPEN) {
      Shared shared = OPEN.get(path);
      if (shared == null) {
        shared = new Shared(path, disk.open(path));
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
      if (shared.file.write(number, TURN_AT) != Long.BYTES) {
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
    return shared.file.read(number, TURN_AT) == Long.BYTES ? number.flip().getLong() : 0;
  }

  /** Tries to become the owner of the register file until this is closed. */
  public boolean ownRegister() throws IOException {
    synchronized (OPEN) {
      if (shared.registerTaken) {
        return false;
      }
      register = shared.file.tryLock(1);
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
        shared.file.close();
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
    final Disk.File file;
    final ReentrantLock threads = new ReentrantLock(true);
    int users;
    boolean registerTaken;
    Disk.@Nullable Lock stuck;

    Shared(Path path, Disk.File file) {
      this.path = path;
      this.file = file;
    }

    Held take() throws IOException {
      threads.lock();
      try {
        unstick();
        Disk.Lock lock = waitForOthers();
        return () -> {
          stuck = lock;
          try {
            unstick();
          } finally {
            threads.unlock();
          }
        };
      } catch (IOException | RuntimeException e) {
        threads.unlock();
        throw e;
      }
    }

    /** A lock that could not be given back is given back before it is taken again. */
    private void unstick() throws IOException {
      Disk.Lock lock = stuck;
      if (lock != null) {
        lock.release();
        stuck = null;
      }
    }

    /** An interrupt ends neither the wait nor the rests in it; the caller finds it afterwards. */
    private Disk.Lock waitForOthers() throws IOException {
      long start = System.nanoTime();
      boolean interrupted = false;
      try {
        Disk.Lock lock = file.tryLock(0);
        while (lock == null) {
          if (System.nanoTime() - start > PATIENCE) {
            throw new Problem.Outside(null, LedgerSays.LOCK_HELD);
          }
          LockSupport.parkNanos(200_000);
          interrupted |= Thread.interrupted();
          lock = file.tryLock(0);
        }
        return lock;
      } finally {
        if (interrupted) {
          Thread.currentThread().interrupt();
        }
      }
    }
  }
}
