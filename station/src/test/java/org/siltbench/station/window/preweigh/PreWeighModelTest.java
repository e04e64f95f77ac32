package org.siltbench.station.window.preweigh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.window.preweigh.PreWeighModel.Step;

/** A pre-weighing without a screen, over the practice balance whose hand obeys. */
@Timeout(60)
class PreWeighModelTest {

  @TempDir Path folder;

  private static void await(BooleanSupplier until) {
    while (!until.getAsBoolean()) {
      LockSupport.parkNanos(5_000_000L);
    }
  }

  @Test
  void without_a_balance_it_says_so_and_does_not_start() {
    try (TestDesk bench = new TestDesk(folder)) {
      bench.batch("storm", "epa-160.2", "sample");
      PreWeighModel model = new PreWeighModel(bench.desk());
      model.refresh();
      assertEquals(List.of(new PreWeighModel.Choice("storm", 1)), model.batches());
      model.start("storm", "", 0, false);
      assertEquals(Step.SET_UP, model.step().get());
      assertEquals("No balance is connected.", bench.desk().notices().list().get(0).what());
    }
  }

  @Test
  void a_printer_that_is_not_there_keeps_the_label_and_never_the_mass() {
    try (TestDesk bench = new TestDesk(folder)) {
      bench.batch("storm", "epa-160.2", "sample", "sample");
      bench.desk().prefs().put(Prefs.Name.PRINTER, "no-such-queue");
      PreWeighModel model = new PreWeighModel(bench.desk());
      bench.assembly().connect("practice?speed=100");
      await(() -> bench.desk().balance().orElseThrow().hand() != null);
      model.start("storm", "", 0, false);
      await(() -> model.step().get() == Step.OVER);
      assertEquals(2, model.done().get());
      assertEquals(
          List.of(PreRow.Kind.MASS, PreRow.Kind.MASS),
          model.rows().stream().map(PreRow::kind).toList());
      assertEquals(List.of(Cues.Cue.RECORDED, Cues.Cue.RECORDED), bench.heard());
      assertTrue(
          bench.desk().notices().list().stream()
              .anyMatch(n -> n.about().equals("printer") && n.safe().contains("recorded")),
          bench.desk().notices().list().toString());
    }
  }
}
