package org.siltbench.station.window.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.window.StormLab;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.load.LoadUnit;
import org.siltbench.station.work.results.ResultSheet;
import org.siltbench.station.work.scan.BagScan;

/** What the results screen shows and writes, without a screen. */
class ResultsModelTest {

  @TempDir Path folder;

  @Test
  void without_a_batch_nothing_is_shown() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      ResultsModel model = new ResultsModel(desk.desk());
      model.refresh();
      assertTrue(model.batch().batch().get().isEmpty());
      assertEquals(ResultsModel.Shown.NOTHING, model.shown().get());
    }
  }

  @Test
  void figures_are_those_of_the_report_and_follow_the_ledger() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      StormLab storm = new StormLab(desk);
      ResultsModel model = new ResultsModel(desk.desk());
      model.refresh();
      ResultSheet sheet = model.shown().get().sheet().orElseThrow();
      assertEquals(12, sheet.lines().size());
      // 28.4 mg in 0.250 L = 113.6 mg/L, shown with at most three digits
      assertEquals("114", sheet.lines().get(2).conc());
      assertEquals(2, sheet.report().blanks().size());
      assertEquals(1, sheet.report().duplicates().size());
      assertEquals("no", sheet.lines().get(4).constant());

      desk.desk().go("results");
      desk.write(
          "hold",
          "batch",
          storm.batch(),
          "filters",
          storm.ids().subList(0, 1),
          "reason",
          "look again");
      assertEquals(
          "look again", model.shown().get().sheet().orElseThrow().lines().get(0).holds().get(0));
    }
  }

  @Test
  void a_scanned_bag_brings_its_batch_and_line() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      StormLab storm = new StormLab(desk);
      desk.batch("next one", StormLab.METHOD, "sample");
      ResultsModel model = new ResultsModel(desk.desk());
      model.refresh();
      assertEquals("next one", model.batch().batch().get().orElseThrow().name());

      assertTrue(model.scanned(BagScan.of(storm.ids().get(3))));
      assertEquals(storm.batch(), model.batch().batch().get().orElseThrow().code());
      assertEquals(storm.ids().get(3), model.wanted().get());
    }
  }

  @Test
  void all_files_are_written_and_a_folder_that_cannot_be_made_is_told() throws IOException {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      new StormLab(desk);
      ResultsModel model = new ResultsModel(desk.desk());
      model.refresh();
      model.write(folder.resolve("out").toString(), "Alder Fork");
      assertTrue(Files.exists(folder.resolve("out").resolve("report.pdf")));
      assertTrue(model.files().size() >= 10, model.files().toString());

      Path file = Files.createFile(folder.resolve("a-file"));
      model.write(file.resolve("below").toString(), "");
      assertEquals(Notice.Level.TROUBLE, desk.desk().notices().list().get(0).level());
    }
  }

  @Test
  void a_load_comes_from_discharge_and_bad_cells_are_told() throws IOException {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      new StormLab(desk);
      ResultsModel model = new ResultsModel(desk.desk());
      LoadModel load = new LoadModel(desk.desk(), model);
      model.refresh();
      load.calculate(asked(""));
      assertFalse(desk.desk().notices().list().isEmpty());

      load.calculate(asked(StormFlow.write(folder).toString()));
      LoadModel.Answer answer = load.answer().get().orElseThrow();
      assertEquals(2, answer.sheets().size());
      assertTrue(desk.desk().notices().list().isEmpty());
      load.write(asked(StormFlow.write(folder).toString()), folder.resolve("load").toString());
      assertTrue(Files.exists(folder.resolve("load").resolve("load.csv")));
    }
  }

  private static LoadModel.Asked asked(String discharge) {
    return new LoadModel.Asked(discharge, "", "", "1h", "6h", LoadUnit.METRIC);
  }
}
