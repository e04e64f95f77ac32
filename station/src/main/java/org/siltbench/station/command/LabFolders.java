package org.siltbench.station.command;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.random.RandomGenerator;
import org.siltbench.station.Problem;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;
import org.siltbench.station.bench.Setting;
import org.siltbench.station.life.LifeSubjects;
import org.siltbench.station.people.GuardedLab;
import org.siltbench.station.people.People;
import org.siltbench.station.people.Person;

/** Lab folders on the disk. */
public final class LabFolders implements Labs {

  private final RandomGenerator random;

  /** New labs get a code and a key that nobody can guess. */
  public LabFolders() {
    this(new SecureRandom());
  }

  /** Codes and keys from the given chance: a seeded one makes the same lab again. */
  public LabFolders(RandomGenerator random) {
    this.random = random;
  }

  @Override
  public boolean exists(Path dir) {
    return LabFolder.exists(dir);
  }

  @Override
  public OpenLab open(Path dir, Who who) {
    People people = new People(dir, who.clock(), random);
    if (people.isOpen()) {
      return LabFolder.open(dir, setting(who));
    }
    Who known = new Who(People.named(who.operator()), who.pin(), who.clock(), who.notes());
    return new GuardedLab(
        LabFolder.open(dir, setting(known)), GuardedLab.once(() -> signOn(people, known)));
  }

  @Override
  public OpenLab create(Path dir, Who who, String name, boolean practice) {
    return LabFolder.create(dir, name, practice, setting(who));
  }

  /** Lets the operator in by the PIN. */
  static Person signOn(People people, Who who) {
    char[] pin =
        who.pin()
            .get()
            .orElseThrow(
                () ->
                    new Problem.Refused(
                        "This lab knows its people, and there is no PIN.",
                        "Nothing was recorded.",
                        "Give --operator and --pin-file, or the variable SILTBENCH_PIN."));
    try {
      return people.signOn(who.operator(), pin);
    } finally {
      Arrays.fill(pin, '\0');
    }
  }

  Setting setting(Who who) {
    return new Setting(
        who.operator(),
        who.clock(),
        random,
        new LifeSubjects(),
        note -> who.notes().accept(note.english()));
  }
}
