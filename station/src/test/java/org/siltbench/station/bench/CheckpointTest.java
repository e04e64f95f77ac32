package org.siltbench.station.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.siltbench.station.bench.Labs.weighing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.Draft;

class CheckpointTest {

  @TempDir Path folder;
  private final Labs labs = new Labs(3);

  @Test
  void aSecondOpeningFoldsTheTailOntoTheCheckpointAndKnowsTheSame() throws Exception {
    List<Draft> many = new ArrayList<>();
    for (int i = 0; i < 2_010; i++) {
      many.add(weighing("F" + i % 300, "0." + i));
    }
    try (OpenLab owner = labs.create(folder)) {
      owner.act(view -> many);
    }
    Path register = folder.resolve("register");
    assertTrue(Files.exists(register.resolve("checkpoint.mv.db")));
    try (OpenLab owner = labs.open(folder)) {
      owner.act(view -> List.of(weighing("F1", "0.9")));
      try (OpenLab beside = labs.open(folder)) {
        assertEquals(1, besides(register));
        assertEquals(Labs.export(owner), Labs.export(beside));
        beside.act(view -> List.of(weighing("F2", "0.8")));
        owner.act(view -> List.of());
        assertEquals(Labs.export(owner), Labs.export(beside));
      }
      assertEquals(0, besides(register));
      Files.write(register.resolve("checkpoint.mv.db"), new byte[5000]);
      try (OpenLab beside = labs.open(folder)) {
        assertEquals(Labs.export(owner), Labs.export(beside));
      }
      assertEquals(0, besides(register));
    }
  }

  private static long besides(Path register) throws Exception {
    try (Stream<Path> files = Files.list(register)) {
      return files.filter(file -> file.getFileName().toString().startsWith("beside-")).count();
    }
  }
}
