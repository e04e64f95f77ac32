package org.siltbench.station.command;

import java.nio.file.Files;
import java.nio.file.Path;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.Bench;

/** Lab folders on the disk. */
final class LabFolders implements Labs {

  @Override
  public boolean exists(Path dir) {
    return Files.isDirectory(dir.resolve("ledger"));
  }

  @Override
  public Bench open(Path dir, Who who) {
    throw notYet(dir);
  }

  @Override
  public Bench create(Path dir, Who who, String name, boolean practice) {
    throw notYet(dir);
  }

  private static Problem notYet(Path dir) {
    return new Problem.Outside("This copy cannot open " + dir + " yet.", "", "", null);
  }
}
