package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.siltbench.station.bench.Labs.correction;
import static org.siltbench.station.bench.Labs.weighing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.ledger.EntryRef;

class ArrivalOrderTest {

  @TempDir Path folder;

  /** Three benches exchange at random moments; whatever the order, the registers are the same. */
  @Test
  void anyOrderOfArrivalGivesTheSameRegisterAndSoDoesARebuild() throws IOException {
    for (int seed = 0; seed < 5; seed++) {
      schedule(seed);
    }
  }

  private void schedule(int seed) throws IOException {
    Random random = new Random(seed);
    Path place = Files.createDirectory(folder.resolve("s" + seed));
    List<OpenLab> labs = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      labs.add(new Labs(100 * seed + i).create(place.resolve("lab" + i)));
    }
    for (int step = 0; step < 40; step++) {
      OpenLab lab = labs.get(random.nextInt(3));
      if (random.nextInt(3) == 0) {
        pull(lab, labs.get(random.nextInt(3)), 1 + random.nextInt(10));
      } else {
        lab.act(view -> List.of(draft(lab, random)));
      }
    }
    for (int round = 0; round < 2; round++) {
      for (OpenLab to : labs) {
        for (OpenLab from : labs) {
          pull(to, from, 1000);
        }
      }
    }
    String export = Labs.export(labs.get(0));
    for (OpenLab lab : labs) {
      assertEquals(export, Labs.export(lab), "seed " + seed);
      lab.rebuild();
      assertEquals(export, Labs.export(lab), "rebuilt, seed " + seed);
      lab.close();
    }
    assertNotEquals("", export);
  }

  /** Brings all ledgers that one bench has to another, some lines at a time. */
  private static void pull(OpenLab to, OpenLab from, int lines) {
    if (to == from) {
      return;
    }
    for (String bench : from.ledgers().keySet()) {
      if (!bench.equals(to.code())) {
        long have = to.ledgers().containsKey(bench) ? to.ledgers().get(bench).seq() : 0;
        to.receive(bench, from.lines(bench, have, lines));
      }
    }
  }

  private static Draft draft(OpenLab lab, Random random) {
    String filter = "F" + random.nextInt(4);
    if (random.nextInt(3) > 0) {
      return weighing(filter, "0." + random.nextInt(1000));
    }
    List<Entry> all = new ArrayList<>();
    lab.register().each(all::add);
    EntryRef target = all.get(random.nextInt(all.size())).ref();
    Map<String, Object> inner = new LinkedHashMap<>();
    inner.put("filter", filter);
    return switch (random.nextInt(3)) {
      case 0 -> correction(target, "filter", filter);
      case 1 -> correction(target, "mass_g", "0." + random.nextInt(1000));
      default -> correction(target, "set", inner);
    };
  }
}
