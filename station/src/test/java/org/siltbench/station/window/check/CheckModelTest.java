package org.siltbench.station.window.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.balance.Timebase;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.check.CheckSheet;
import org.siltbench.station.work.check.Phase;
import org.siltbench.station.work.live.LiveBalance;
import org.siltbench.station.work.weigh.Scale;

/** What the check screen shows and records, without a screen. */
class CheckModelTest {

  @TempDir Path folder;

  private static void check(TestDesk desk, String errorMg) {
    desk.write(
        "check.weighed",
        "balance",
        "practice",
        "weight",
        "100mg",
        "phase",
        "opening",
        "pass",
        true,
        "error_mg",
        errorMg,
        "limit_mg",
        "0.5",
        "reading_g",
        "0.1000");
  }

  @Test
  void without_a_balance_nothing_starts_and_the_way_out_is_told() {
    try (TestDesk desk = new TestDesk(folder)) {
      CheckModel model = new CheckModel(desk.desk());
      desk.desk().go("check");
      model.refresh();
      model.start("100mg", Phase.OPENING, "sm-2540d-23");
      assertEquals(CheckModel.Step.CHOOSE, model.step().get());
      Notice told = desk.desk().notices().list().get(0);
      assertTrue(told.next().contains("settings"), told.next());
    }
  }

  @Test
  void a_run_on_one_side_is_told_as_soon_as_limits_exist() {
    try (TestDesk desk = new TestDesk(folder)) {
      desk.desk().balance(unopened());
      CheckModel model = new CheckModel(desk.desk());
      desk.desk().go("check");
      model.choose("100mg");
      for (int i = 0; i < 8; i++) {
        check(desk, i % 2 == 0 ? "-0.10" : "-0.08");
      }
      assertTrue(sheet(model).signals().isEmpty());
      for (int i = 0; i < 8; i++) {
        check(desk, i % 2 == 0 ? "0.10" : "0.08");
      }
      assertEquals(16, sheet(model).lines().size());
      // NIST/SEMATECH e-Handbook 6.3.2: eight in a row on one side of the centre line
      assertTrue(
          sheet(model).signals().stream().anyMatch(s -> s.rule().equals("EIGHT_ON_ONE_SIDE")));
    }
  }

  private static LiveBalance unopened() {
    return new LiveBalance(
        Scale.parse("practice"),
        spec -> {
          throw new IOException("not in this test");
        },
        Timebase.system(),
        event -> {});
  }

  private static CheckSheet sheet(CheckModel model) {
    return model.sheet().get().orElseThrow();
  }

  @Test
  void weights_and_room_are_recorded_and_nonsense_is_refused() {
    try (TestDesk desk = new TestDesk(folder)) {
      EquipModel model = new EquipModel(desk.desk());
      desk.desk().go("check");
      Map<String, String> weight =
          Map.of(
              "weight.name",
              "E2-100",
              "nominal",
              "0,1",
              "certified",
              "0.100003",
              "expanded",
              "0.006",
              "k",
              "",
              "certificate",
              "C-17",
              "weight.due",
              "2026-01-31");
      model.recordWeight(weight::get);
      assertEquals("0.100003", model.weights().get(0).certified().toGrams());
      assertEquals("0.003", model.weights().get(0).standardUncertainty().toMilligrams());

      model.noteRoom(key -> key.equals("temperature") ? "21,4" : "");
      assertEquals("21.4", model.room().get(0).temperature());
      model.noteRoom(key -> key.equals("humidity") ? "140" : "");
      assertEquals(1, model.room().size());
      assertEquals(Notice.Level.REFUSED, desk.desk().notices().list().get(0).level());
    }
  }

  @Test
  void a_balance_is_described_and_read_back() {
    try (TestDesk desk = new TestDesk(folder)) {
      EquipModel model = new EquipModel(desk.desk());
      desk.desk().go("check");
      Map<String, String> typed =
          Map.of(
              "name", "left bench", "serial", "17", "resolution", "0.00001", "due", "2027-01-31");
      model.recordBalance(key -> typed.getOrDefault(key, ""));
      assertFalse(desk.desk().notices().list().isEmpty());
      assertEquals(
          "17",
          org.siltbench.station.work.equip.BalanceRecord.of(
                  desk.desk().lab().register(), "left bench")
              .orElseThrow()
              .serial());
    }
  }
}
