package org.siltbench.station.register;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import org.h2.store.fs.FilePathWrapper;
import org.siltbench.station.ledger.SteadyFile;

/**
 * The database's way to its file, which an interrupt does not close. Public because the database
 * makes more of them itself.
 */
public final class SteadyPath extends FilePathWrapper {

  static final String SCHEME = "steady";

  @Override
  public String getScheme() {
    return SCHEME;
  }

  @Override
  public FileChannel open(String mode) throws IOException {
    Path file = Path.of(getBase().toString());
    return new SteadyChannel("r".equals(mode) ? SteadyFile.read(file) : SteadyFile.open(file));
  }
}
