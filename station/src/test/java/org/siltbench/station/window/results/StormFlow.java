package org.siltbench.station.window.results;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The invented storm's discharge at its two sites. */
final class StormFlow {

  private StormFlow() {}

  static Path write(Path folder) throws IOException {
    StringBuilder csv = new StringBuilder("time,site,q_m3_s\n");
    for (String site : new String[] {"footbridge", "ford"}) {
      for (int i = 0; i <= 30; i++) {
        double q = 0.4 + 1.9 * Math.exp(-Math.pow((i - 10) / 7.0, 2));
        csv.append(
            String.format("2026-05-12T%02d:%02dZ,%s,%.3f%n", 9 + i / 6, i % 6 * 10, site, q));
      }
    }
    return Files.writeString(folder.resolve("discharge.csv"), csv);
  }
}
