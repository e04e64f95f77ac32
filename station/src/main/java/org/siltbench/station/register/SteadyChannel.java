package org.siltbench.station.register;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileLock;
import org.h2.store.fs.FileBaseDefault;
import org.jspecify.annotations.Nullable;
import org.siltbench.station.ledger.SteadyFile;

/** A steady file in the form the database takes. */
final class SteadyChannel extends FileBaseDefault {

  private final SteadyFile file;

  SteadyChannel(SteadyFile file) {
    this.file = file;
  }

  @Override
  public long size() throws IOException {
    return file.size();
  }

  @Override
  public synchronized int read(ByteBuffer into, long at) throws IOException {
    return file.read(into, at);
  }

  @Override
  public synchronized int write(ByteBuffer from, long at) throws IOException {
    return file.write(from, at);
  }

  @Override
  protected void implTruncate(long size) throws IOException {
    file.truncate(size);
  }

  @Override
  public void force(boolean metaData) throws IOException {
    file.force();
  }

  @Override
  public @Nullable FileLock tryLock(long at, long length, boolean shared) throws IOException {
    return file.lock(at, length, shared);
  }

  @Override
  protected void implCloseChannel() throws IOException {
    file.close();
  }
}
