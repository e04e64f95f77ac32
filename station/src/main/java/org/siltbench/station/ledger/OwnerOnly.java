package org.siltbench.station.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Files and folders that only their owner may read, where the system can say so. */
public final class OwnerOnly {

  private OwnerOnly() {}

  /** For a new file. */
  public static FileAttribute<?>[] file(Path path) {
    return attributes(path, "rw-------");
  }

  /** For a new folder. */
  public static FileAttribute<?>[] folder(Path path) {
    return attributes(path, "rwx------");
  }

  /** Takes the rights of all others from a file that exists. */
  public static void close(Path file) throws IOException {
    if (isPosix(file)) {
      Files.setPosixFilePermissions(
          file,
          PosixFilePermissions.fromString(Files.isDirectory(file) ? "rwx------" : "rw-------"));
    }
  }

  private static FileAttribute<?>[] attributes(Path path, String rights) {
    return isPosix(path)
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }

  /** True where files have owners and rights. */
  public static boolean isPosix(Path path) {
    return path.getFileSystem().supportedFileAttributeViews().contains("posix");
  }
}
