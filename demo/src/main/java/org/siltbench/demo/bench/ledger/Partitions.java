package org.siltbench.demo.bench.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.siltbench.station.bench.LabFolder;
import org.siltbench.station.bench.OpenLab;

/** Benches that meet at random and in the end all together: their registers must be the same. */
final class Partitions {

  private static final int BENCHES = 3;

  private Partitions() {}

  static Map<String, Object> run(Path folder, int schedules, int piece) throws IOException {
    long exchanged = 0;
    for (int i = 0; i < schedules; i++) {
      Path place = folder.resolve("partition" + i);
      exchanged += schedule(place, 1_000_000L * piece + i);
      Bits.remove(place);
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("schedules", (long) schedules);
    result.put("lines_exchanged", exchanged);
    result.put("same_state", (long) schedules);
    return result;
  }

  private static long schedule(Path place, long seed) {
    Random random = new Random(seed);
    List<OpenLab> labs = new ArrayList<>();
    for (int i = 0; i < BENCHES; i++) {
      labs.add(
          LabFolder.create(place.resolve("lab" + i), "lab", false, Bits.setting(1000 * seed + i)));
    }
    long exchanged = 0;
    for (int step = 0; step < 40; step++) {
      OpenLab lab = labs.get(random.nextInt(BENCHES));
      if (random.nextInt(3) == 0) {
        exchanged += pull(lab, labs.get(random.nextInt(BENCHES)), 1 + random.nextInt(10));
      } else {
        String filter = "F" + random.nextInt(5);
        lab.act(view -> List.of(Bits.weighing(filter, "pre", random, 1)));
      }
    }
    for (OpenLab to : labs) {
      for (OpenLab from : labs) {
        exchanged += pull(to, from, 1000);
      }
    }
    String first = export(labs.get(0));
    for (OpenLab lab : labs) {
      if (!first.equals(export(lab))) {
        throw new IllegalStateException("two benches differ, seed " + seed);
      }
      lab.close();
    }
    return exchanged;
  }

  private static long pull(OpenLab to, OpenLab from, int lines) {
    long taken = 0;
    for (String bench : from.ledgers().keySet()) {
      if (to != from && !bench.equals(to.code())) {
        long have = to.ledgers().containsKey(bench) ? to.ledgers().get(bench).seq() : 0;
        taken += to.receive(bench, from.lines(bench, have, lines));
      }
    }
    return taken;
  }

  private static String export(OpenLab lab) {
    StringBuilder text = new StringBuilder();
    lab.export(text);
    return text.toString();
  }
}
