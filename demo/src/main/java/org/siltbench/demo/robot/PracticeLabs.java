package org.siltbench.demo.robot;

import java.nio.file.Path;
import java.util.random.RandomGenerator;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.command.Labs;
import org.siltbench.station.life.LifeSubjects;

/** Lab folders on the disk whose chance comes from a seed: the same run gives the same lab. */
final class PracticeLabs implements Labs {

  private final RandomGenerator random;

  PracticeLabs(RandomGenerator random) {
    this.random = random;
  }

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

  private Setting setting(Who who) {
    return new Setting(who.operator(), who.clock(), random, new LifeSubjects(), who.notes());
  }
}
