package org.siltbench.station.ledger;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.TRUNCATE_EXISTING;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The file system of this computer. */
public final class RealDisk implements Disk {

  @Override
  public File open(Path path) throws IOException {
    return new RealFile(FileChannel.open(path, Set.of(CREATE, READ, WRITE), OwnerOnly.file(path)));
  }

  @Override
  public File read(Path path) throws IOException {
    return new RealFile(FileChannel.open(path, READ));
  }

  @Override
  public List<String> names(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> file.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    Path parent = folder.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.createDirectory(folder, OwnerOnly.folder(folder));
    forceNames(folder);
  }

  @Override
  public void replace(Path path, byte[] content) throws IOException {
    Path fresh = path.resolveSibling(path.getFileName() + ".new");
    Files.deleteIfExists(fresh);
    try (FileChannel channel =
        FileChannel.open(fresh, Set.of(CREATE, WRITE, TRUNCATE_EXISTING), OwnerOnly.file(fresh))) {
      RealFile file = new RealFile(channel);
      file.writeAll(content, 0);
      file.force();
    }
    Files.move(fresh, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    forceNames(path);
  }

  @Override
  public long usableSpace(Path folder) throws IOException {
    long quick = folder.toFile().getUsableSpace(); // no list of mounts is read for this
    return quick > 0 ? quick : Files.getFileStore(folder).getUsableSpace();
  }

  /** A new name is safe once its folder is forced; only POSIX systems offer that. */
  static void forceNames(Path path) throws IOException {
    Path parent = path.toAbsolutePath().getParent();
    if (parent != null && OwnerOnly.isPosix(parent)) {
      try (FileChannel folder = FileChannel.open(parent, READ)) {
        folder.force(true);
      }
    }
  }

  private record RealFile(FileChannel channel) implements File {

    @Override
    public long size() throws IOException {
      return channel.size();
    }

    @Override
    public int read(ByteBuffer into, long at) throws IOException {
      return channel.read(into, at);
    }

    @Override
    public int write(ByteBuffer from, long at) throws IOException {
      return channel.write(from, at);
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
    public void close() throws IOException {
      channel.close();
    }
  }
}
