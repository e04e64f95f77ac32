package org.siltbench.station.ledger;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.channels.AsynchronousFileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An open file that stays open when the thread that uses it is interrupted; a plain file channel
 * would be closed for everybody. Bytes go through one handle; size, force, cutting and locks
 * through a second one, whose channel does these at once and on the calling thread in spite of its
 * name. Both are closed together, since closing one of them would give up the locks.
 */
public final class SteadyFile implements Disk.File {

  private final AsynchronousFileChannel channel;
  private final RandomAccessFile bytes;

  private SteadyFile(AsynchronousFileChannel channel, RandomAccessFile bytes) {
    this.channel = channel;
    this.bytes = bytes;
  }

  /** For reading and writing; made, for its owner only, where it is missing. */
  public static SteadyFile open(Path path) throws IOException {
    return both(
        AsynchronousFileChannel.open(path, Set.of(CREATE, READ, WRITE), null, OwnerOnly.file(path)),
        path,
        "rw");
  }

  /** An existing file, for reading only. */
  public static SteadyFile read(Path path) throws IOException {
    return both(AsynchronousFileChannel.open(path, READ), path, "r");
  }

  private static SteadyFile both(AsynchronousFileChannel channel, Path path, String mode)
      throws IOException {
    try {
      return new SteadyFile(channel, new RandomAccessFile(path.toFile(), mode));
    } catch (IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /** Forces the names in a folder, where the system can open one. */
  static void forceFolder(Path folder) throws IOException {
    try (AsynchronousFileChannel channel = AsynchronousFileChannel.open(folder, READ)) {
      channel.force(true);
    }
  }

  @Override
  public long size() throws IOException {
    return channel.size();
  }

  @Override
  public synchronized int read(ByteBuffer into, long at) throws IOException {
    bytes.seek(at);
    if (into.hasArray()) {
      int start = into.arrayOffset() + into.position();
      int taken = bytes.read(into.array(), start, into.remaining());
      into.position(into.position() + Math.max(0, taken));
      return taken;
    }
    byte[] copy = new byte[into.remaining()];
    int taken = bytes.read(copy);
    into.put(copy, 0, Math.max(0, taken));
    return taken;
  }

  @Override
  public synchronized int write(ByteBuffer from, long at) throws IOException {
    int length = from.remaining();
    bytes.seek(at);
    if (from.hasArray()) {
      bytes.write(from.array(), from.arrayOffset() + from.position(), length);
      from.position(from.limit());
    } else {
      byte[] copy = new byte[length];
      from.get(copy);
      bytes.write(copy);
    }
    return length;
  }

  @Override
  public void force() throws IOException {
    channel.force(false);
  }

  @Override
  public void truncate(long size) throws IOException {
    channel.truncate(size);
  }

  @Override
  public Disk.@Nullable Lock tryLock(long at) throws IOException {
    FileLock lock = lock(at, 1, false);
    return lock == null ? null : lock::release;
  }

  /** The system's lock on a part of the file; null if another process has it. */
  public @Nullable FileLock lock(long at, long length, boolean shared) throws IOException {
    return channel.tryLock(at, length, shared);
  }

  @Override
  public void close() throws IOException {
    try (channel) {
      bytes.close();
    }
  }
}
