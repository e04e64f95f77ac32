package org.siltbench.station.command;

import java.nio.file.Path;
import java.security.SecureRandom;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.life.LifeSubjects;

/** Lab folders on the disk. */
final class LabFolders implements Labs {

  @Override
  public boolean exists(Path dir) {
    return LabFolder.exists(dir);
  }

  @Override
  public OpenLab open(Path dir, Who who) {
    return LabFolder.open(dir, setting(who));
  }

  @Override
  public OpenLab create(Path dir, Who who, String name, boolean practice) {
    return LabFolder.create(dir, name, practice, setting(who));
  }

  private static Setting setting(Who who) {
    return new Setting(
        who.operator(), who.clock(), new SecureRandom(), new LifeSubjects(), who.notes());
  }
}
