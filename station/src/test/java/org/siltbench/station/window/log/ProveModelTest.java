package org.siltbench.station.window.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.ledger.Draft;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.window.TestDesk;

/** A long ledger is proved with a word on the way, and can be stopped. */
class ProveModelTest {

  @TempDir Path folder;

  @Test
  void theReadingOfALongLedgerShowsHowFarItIsAndStopsWhenAsked() {
    try (TestDesk desk = new TestDesk(folder)) {
      var lab = desk.desk().lab();
      String id = desk.batch("storm", "sm-2540d-22", "sample").get(0);
      Entry first = desk.pre(id, "0.11234");
      Draft again = new Draft(first.kind(), first.kv(), first.must(), first.data());
      List<Draft> many = new ArrayList<>();
      for (int i = 0; i < 2500; i++) {
        many.add(again);
      }
      lab.act(view -> many);
      ProveModel model = new ProveModel(desk.desk());
      List<Double> shares = new ArrayList<>();
      model.doing().share().subscribe(share -> shares.add(share.doubleValue()));
      model.verify();
      assertTrue(model.report().get().orElseThrow().ok());
      assertTrue(shares.stream().anyMatch(share -> share > 0.3 && share < 0.9), shares::toString);
      assertEquals("lines", model.doing().what().get());

      ProveModel stopped = new ProveModel(desk.desk());
      stopped.doing().share().subscribe(share -> stopIfBegun(stopped, share.doubleValue()));
      stopped.verify();
      assertFalse(stopped.report().get().isPresent());
      stopped.verify();
    }
  }

  private static void stopIfBegun(ProveModel model, double share) {
    if (share > 0.1) {
      model.doing().stop();
    }
  }
}
