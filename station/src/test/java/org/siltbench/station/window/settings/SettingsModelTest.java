package org.siltbench.station.window.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.desk.Prefs;
import org.siltbench.station.work.label.RulerTest;

/** Settings without a screen. */
class SettingsModelTest {

  @TempDir Path folder;

  @Test
  void likes_are_kept_and_told() {
    try (TestDesk desk = new TestDesk(folder)) {
      SettingsModel model = new SettingsModel(desk.desk());
      long before = desk.desk().likes().get();
      model.like(Prefs.Name.THEME, "contrast");
      assertEquals(before + 1, desk.desk().likes().get());
      assertEquals("contrast", Prefs.of(folder).get(Prefs.Name.THEME));
    }
  }

  @Test
  void a_balance_text_that_is_none_is_refused_and_the_old_one_stays() {
    try (TestDesk desk = new TestDesk(folder)) {
      SettingsModel model = new SettingsModel(desk.desk());
      model.useBalance("carrier pigeon");
      assertEquals(Notice.Level.REFUSED, desk.desk().notices().list().get(0).level());
      assertEquals("", model.like(Prefs.Name.BALANCE));
    }
  }

  @Test
  void a_ruler_makes_the_stock_true_and_the_bench_uses_it() {
    try (TestDesk desk = new TestDesk(folder)) {
      SettingsModel model = new SettingsModel(desk.desk());
      model.refresh();
      assertTrue(model.media().contains("roll-50x25"), model.media().toString());
      model.drawRuler();
      assertTrue(Files.exists(folder.resolve("papers").resolve("ruler-roll-50x25.pdf")));
      List<String> expected = RulerTest.of("roll-50x25").expected();
      model.makeTrue(List.of("much", "1", "1", "1"));
      assertEquals("roll-50x25", model.like(Prefs.Name.MEDIA));
      model.makeTrue(expected);
      assertTrue(model.like(Prefs.Name.MEDIA).endsWith("roll-50x25.media"));
      assertTrue(model.media().contains(model.like(Prefs.Name.MEDIA)), "it can be chosen again");
    }
  }

  @Test
  void an_own_method_is_a_copy_under_a_key_of_its_own() {
    try (TestDesk desk = new TestDesk(folder)) {
      SettingsModel model = new SettingsModel(desk.desk());
      model.refresh();
      String text = model.methods().get(0).text();
      model.saveMethod(model.methods().get(0).key(), text);
      assertFalse(desk.desk().notices().list().isEmpty());
      model.saveMethod("alder-fork-1", text);
      assertEquals("alder-fork-1", desk.desk().methods().get("alder-fork-1").key());
      model.saveMethod("alder-fork-2", "key = x\nnothing of a method");
      assertEquals(Notice.Level.REFUSED, desk.desk().notices().list().get(0).level());
      assertFalse(Files.exists(folder.resolve("methods").resolve("alder-fork-2.method")));
    }
  }

  @Test
  void people_are_registered_by_a_supervisor_only() {
    try (TestDesk desk = new TestDesk(folder)) {
      SettingsModel model = new SettingsModel(desk.desk());
      model.register("AB", Right.SUPERVISE, "4711".toCharArray(), "4712".toCharArray(), "");
      assertTrue(model.people().isEmpty());
      model.register("AB", Right.SUPERVISE, "4711".toCharArray(), "4711".toCharArray(), "");
      assertEquals(1, model.people().size());

      desk.desk().signOn().on(new Person("CD", Right.WEIGH));
      model.register("EF", Right.WEIGH, "1234".toCharArray(), "1234".toCharArray(), "");
      model.remove(model.people().get(0));
      assertEquals(List.of(new Person("AB", Right.SUPERVISE)), model.people());
      assertEquals(Notice.Level.REFUSED, desk.desk().notices().list().get(0).level());
    }
  }
}
