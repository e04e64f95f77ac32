package org.siltbench.station.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The few things the ledger asks of a disk, so that a faulty disk can be put in its place. */
public interface Disk {

  /** Opens a file for reading and writing; makes it, for the owner only, where it is missing. */
  File open(Path path) throws IOException;

  /** Opens an existing file for reading. */
  File read(Path path) throws IOException;

  /** The names of the plain files in a folder, sorted; empty if there is no such folder. */
  List<String> names(Path folder) throws IOException;

  /** Makes a folder for the owner only, with its parents, and forces its name. */
  void makeFolder(Path folder) throws IOException;

  /** Puts a whole small file in place at once: old or new content after a power cut. */
  void replace(Path path, byte[] content) throws IOException;

  /** Bytes that may still be written in the folder. */
  long usableSpace(Path folder) throws IOException;

  /** A lock of the system, held until it is given back. */
  interface Lock {

    void release() throws IOException;
  }

  /** One open file. None of this ends because the calling thread is interrupted. */
  interface File extends Closeable {

    long size() throws IOException;

    /** Reads some bytes; -1 at the end. */
    int read(ByteBuffer into, long at) throws IOException;

    /** Writes some of the bytes, perhaps not all. */
    int write(ByteBuffer from, long at) throws IOException;

    /** Returns when all that was written is on the disk. */
    void force() throws IOException;

    void truncate(long size) throws IOException;

    /** Tries to lock one byte against other processes; null if another one has it. */
    @Nullable Lock tryLock(long at) throws IOException;

    @Override
    void close() throws IOException;

    /** Reads exactly so many bytes. */
    default byte[] bytes(long at, int length) throws IOException {
      ByteBuffer buffer = ByteBuffer.allocate(length);
      while (buffer.hasRemaining()) {
        if (read(buffer, at + buffer.position()) < 0) {
          throw new java.io.EOFException("the file ends before byte " + (at + length));
        }
      }
      return buffer.array();
    }

    /** Writes all of the bytes. */
    default void writeAll(byte[] bytes, long at) throws IOException {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        if (write(buffer, at + buffer.position()) <= 0) {
          throw new IOException("the disk took only part of what was written");
        }
      }
    }
  }
}
