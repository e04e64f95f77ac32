package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.Disk;
import org.siltbench.station.ledger.RealDisk;

/** The real disk, made to fail on order. */
final class FailingDisk implements Disk {
  private final Disk real = new RealDisk();
  long space = Long.MAX_VALUE;
  int failingForces;
  int forces;
  int failingReleases;

  @Override
  public File open(Path path) throws IOException {
    File file = real.open(path);
    return new File() {
      @Override
      public long size() throws IOException {
        return file.size();
      }

      @Override
      public int read(ByteBuffer into, long at) throws IOException {
        return file.read(into, at);
      }

      @Override
      public int write(ByteBuffer from, long at) throws IOException {
        return file.write(from, at);
      }

      @Override
      public void force() throws IOException {
        if (failingForces > 0) {
          failingForces--;
          throw new IOException("Input/output error");
        }
        forces++;
        file.force();
      }

      @Override
      public void truncate(long size) throws IOException {
        file.truncate(size);
      }

      @Override
      public @Nullable Lock tryLock(long at) throws IOException {
        Lock lock = file.tryLock(at);
        return lock == null ? null : () -> release(lock);
      }

      @Override
      public void close() throws IOException {
        file.close();
      }
    };
  }

  private void release(Lock lock) throws IOException {
    if (failingReleases > 0) {
      failingReleases--;
      throw new IOException("No locks available");
    }
    lock.release();
  }

  @Override
  public File read(Path path) throws IOException {
    return real.read(path);
  }

  @Override
  public List<String> names(Path place) throws IOException {
    return real.names(place);
  }

  @Override
  public void makeFolder(Path place) throws IOException {
    real.makeFolder(place);
  }

  @Override
  public void replace(Path path, byte[] content) throws IOException {
    real.replace(path, content);
  }

  @Override
  public long usableSpace(Path place) {
    return space;
  }
}
