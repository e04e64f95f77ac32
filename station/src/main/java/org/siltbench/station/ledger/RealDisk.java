package org.siltbench.station.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;

/** The file system of this computer. */
public final class RealDisk implements Disk {

  @Override
  public File open(Path path) throws IOException {
    return SteadyFile.open(path);
  }

  @Override
  public File read(Path path) throws IOException {
    return SteadyFile.read(path);
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
    try (File file = open(fresh)) {
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
      SteadyFile.forceFolder(parent);
    }
  }
}
