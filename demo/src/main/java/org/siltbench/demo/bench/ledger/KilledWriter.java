package org.siltbench.demo.bench.ledger;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;

/** Weighs without end and announces each filter after the act; it is there to be killed. */
final class KilledWriter {

  private KilledWriter() {}

  public static void main(String[] args) {
    Random random = new Random();
    long pid = ProcessHandle.current().pid();
    try (OpenLab lab = LabFolder.open(Path.of(args[0]), Bits.setting(pid))) {
      for (long n = 0; !System.out.checkError(); n++) { // ends where nobody reads any more
        String filter = "P" + pid + "-" + n;
        lab.act(view -> List.of(Bits.weighing(filter, "pre", random, 5)));
        System.out.println(filter + ";");
        System.out.flush();
      }
    }
  }
}
