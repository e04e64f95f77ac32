package org.siltbench.station.window.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.StormLab;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.release.Readiness;
import org.siltbench.station.work.release.Readiness.Kind;

/** Quality and release without a screen. */
class QualityModelTest {

  @TempDir Path folder;

  private static Readiness now(QualityModel model) {
    return model.readiness().get().orElseThrow();
  }

  private static Notice told(TestDesk desk) {
    return desk.desk().notices().list().get(0);
  }

  @Test
  void a_rule_stands_in_the_way_until_a_reason_is_given() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      StormLab storm = new StormLab(desk);
      QualityModel model = new QualityModel(desk.desk());
      desk.desk().go("quality");
      model.refresh();
      assertEquals(1, now(model).count(Kind.RULE));
      assertEquals(storm.ids().get(4), now(model).questions().get(0).filter());

      model.release("", false, "");
      assertEquals(Notice.Level.REFUSED, told(desk).level());
      assertTrue(desk.heard().contains(Cues.Cue.REFUSED));

      model.release("", false, "Dried a third time without change.");
      assertEquals(storm.batch() + "-R1", now(model).reports().get(0).report());
      model.release("", false, "again");
      assertTrue(told(desk).what().contains("Nothing has changed"), told(desk).what());
    }
  }

  @Test
  void a_held_result_is_not_released_and_only_a_supervisor_lifts_it() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      StormLab storm = new StormLab(desk);
      List<String> one = storm.ids().subList(0, 1);
      QualityModel model = new QualityModel(desk.desk());
      desk.desk().go("quality");
      model.refresh();
      model.hold(one, false, "");
      assertEquals(Notice.Level.REFUSED, told(desk).level());
      model.hold(one, false, "The bag was wet.");
      assertEquals(1, now(model).count(Kind.HELD));
      model.release("", false, "all the same");
      assertTrue(told(desk).what().contains("held"), told(desk).what());

      desk.desk().signOn().on(new Person("CD", Right.WEIGH));
      model.hold(one, true, "It was rain.");
      assertEquals(1, now(model).count(Kind.HELD));
      desk.desk().signOn().on(new Person("AB", Right.SUPERVISE));
      model.hold(one, true, "It was rain.");
      assertEquals(0, now(model).count(Kind.HELD));
    }
  }

  @Test
  void an_amended_report_replaces_the_first_and_each_has_its_pdf() {
    try (TestDesk desk = new TestDesk(folder.resolve("lab"))) {
      StormLab storm = new StormLab(desk);
      QualityModel model = new QualityModel(desk.desk());
      desk.desk().go("quality");
      model.refresh();
      Path results = folder.resolve("lab").resolve("results").resolve(storm.batch());
      model.writeReport("");
      assertTrue(Files.exists(results.resolve("draft.pdf")));
      model.release("R-17", false, "accepted");
      storm.correctVolume(0, "245");
      model.release("", false, "accepted");
      Readiness.Past newest = now(model).reports().get(0);
      assertEquals("R-17", newest.replaces());
      model.writeReport("Alder Fork");
      assertTrue(Files.exists(results.resolve(newest.report() + ".pdf")));
    }
  }
}
