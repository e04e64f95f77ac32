package org.siltbench.station.register;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.store.fs.FilePath;
import org.siltbench.station.ledger.OwnerOnly;

/** How the database is opened: one process, no server, no console, no script from outside. */
final class H2 {

  static final String MEMORY = "jdbc:h2:mem:;DB_CLOSE_ON_EXIT=FALSE";

  private H2() {}

  /** Settings in a path would be taken as settings of the database, so such a path is refused. */
  static boolean takes(Path file) {
    return file.toString().indexOf(';') < 0;
  }

  static String file(Path file) {
    if (!takes(file)) {
      throw new RegisterFailed("a folder name with a semicolon cannot hold the register", null);
    }
    forOwnerOnly(file.resolveSibling(file.getFileName() + ".mv.db"));
    FilePath.register(new SteadyPath());
    return "jdbc:h2:"
        + SteadyPath.SCHEME
        + ":"
        + file.toAbsolutePath()
        + ";DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0;AUTO_SERVER=FALSE;CACHE_SIZE=32768";
  }

  /** The database would make its file readable for others. */
  private static void forOwnerOnly(Path file) {
    try {
      if (!Files.exists(file)) {
        Files.createFile(file, OwnerOnly.file(file));
      }
    } catch (IOException e) {
      throw new RegisterFailed("the register's file cannot be made", e);
    }
  }
}
