package org.siltbench.station.bench;

import java.io.IOException;
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

  /** Starts one. */
  static Process start(Path lab) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-Xshare:auto",
            "-Xmx128m",
            "-cp",
            System.getProperty("java.class.path"),
            Writer.class.getName(),
            lab.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

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
