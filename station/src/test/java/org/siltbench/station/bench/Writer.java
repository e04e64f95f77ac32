package org.siltbench.station.bench;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;

/**
 * A process that weighs without end, announcing each filter after the act. It is there to be
 * killed.
 */
public final class Writer {

  private Writer() {}

  public static void main(String[] args) {
    long pid = ProcessHandle.current().pid();
    Setting setting =
        new Setting("AB", Clock.systemDefaultZone(), new Random(), new PlainSubjects(), note -> {});
    OpenLab lab = LabFolder.open(Path.of(args[0]), setting);
    for (int i = 0; ; i++) {
      String filter = "P" + pid + "-" + i;
      lab.act(view -> List.of(Labs.weighing(filter, "0.1")));
      System.out.println(filter + ";");
      System.out.flush();
    }
  }
}
