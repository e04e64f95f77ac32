package org.siltbench.station.bench;

import java.io.IOException;
import java.nio.file.Path;
import org.siltbench.station.ledger.Disk;

/** Copies ledger files byte for byte and forces the copies. */
public final class LedgerCopy {

  private static final int CHUNK = 1 << 20;

  private LedgerCopy() {}

  /** Copies every ledger in a folder. */
  static void all(Path from, Path to, Disk disk) throws IOException {
    for (String name : disk.names(from)) {
      if (!Ledgers.benchOf(name).isEmpty()) {
        try (Disk.File source = disk.read(from.resolve(name))) {
          copy(source, source.size(), to.resolve(name), disk, Count.NOBODY);
        }
      }
    }
  }

  /** Copies the first bytes of a ledger, up to where it is known to be whole. */
  public static void until(long end, Path from, Path to, Disk disk, Count count)
      throws IOException {
    try (Disk.File source = disk.read(from)) {
      copy(source, end, to, disk, count);
    }
  }

  private static void copy(Disk.File source, long end, Path to, Disk disk, Count count)
      throws IOException {
    try (Disk.File target = disk.open(to)) {
      for (long at = 0; at < end; at += CHUNK) {
        target.writeAll(source.bytes(at, (int) Math.min(CHUNK, end - at)), at);
        count.at("MiB of " + to.getFileName() + " copied", at >> 20);
      }
      target.force();
    }
  }
}
