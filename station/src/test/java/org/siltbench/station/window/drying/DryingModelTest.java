package org.siltbench.station.window.drying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.said.Words;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Cues;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.work.drying.Desiccator;

/** The drying screen's model over a real lab: scans in, entries out. */
class DryingModelTest {

  @TempDir Path folder;
  private TestDesk desk;
  private DryingModel model;
  private List<String> ids;

  @BeforeEach
  void open() {
    desk = new TestDesk(folder, Words.SCREEN_ENGLISH);
    ids = desk.batch("storm", "sm-2540d-22", "sample", "sample", "sample", "method-blank");
    ids.forEach(id -> desk.pre(id, "0.11234"));
    for (String id : ids.subList(0, 2)) {
      desk.write("sample.received", "filter", id, "sample", id, "volume_ml", "250");
    }
    model = new DryingModel(desk.desk());
    desk.desk().go("drying");
    model.refresh();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void enter(String... scans) {
    for (String scan : scans) {
      Entered.take(desk.desk(), model, scan);
    }
  }

  private Notice newest() {
    return desk.desk().notices().list().get(0);
  }

  private Status status(String id) {
    return Filters.require(desk.desk().lab().register(), id).status();
  }

  private void startTwo() {
    model.begin();
    enter(ids.get(0), "1", ids.get(1), "2");
    model.start().gauge().temperature.set("104");
    model.start().gauge().thermometer.set("T1");
    model.start().start();
  }

  @Test
  void bag_and_dish_are_scanned_in_turn_and_the_clock_starts() {
    model.begin();
    assertEquals("Scan the first bag.", model.start().prompt().get());
    enter(ids.get(0));
    assertTrue(model.start().prompt().get().contains(ids.get(0)));
    enter("7", ids.get(1), "7");
    assertTrue(newest().what().contains("Dish 7 would hold"), newest().what());
    enter("8");
    assertEquals(
        List.of("7", "8"), model.start().rows().stream().map(StartModel.Placed::dish).toList());
    assertEquals(1, model.start().loads().size());
    model.start().gauge().temperature.set("104,5");
    model.start().start();
    assertEquals(Status.DRYING, status(ids.get(0)));
    assertEquals(DryingModel.Side.CYCLE, model.side().get());
    assertEquals("104.5", model.cycle().shown().get().orElseThrow().plan().cycle().temperatureIn());
    assertEquals(2, model.cycle().dishes().size());
    assertTrue(model.start().rows().isEmpty());
    assertTrue(desk.heard().contains(Cues.Cue.RECORDED));
  }

  @Test
  void a_bag_that_has_not_come_back_is_refused_when_it_is_scanned() {
    model.begin();
    enter(ids.get(2));
    assertEquals(Notice.Level.REFUSED, newest().level());
    assertTrue(newest().next().contains("Receive it first"), newest().next());
    assertTrue(model.start().rows().isEmpty());
    assertTrue(desk.heard().contains(Cues.Cue.REFUSED));
  }

  @Test
  void all_that_wait_can_be_taken_at_once_and_numbered() {
    model.begin();
    assertEquals(3, model.start().waiting().get(0).filters().size());
    model.start().addAll(model.start().waiting().get(0));
    assertTrue(model.start().waiting().isEmpty());
    model.start().number();
    assertEquals(
        List.of("1", "2", "3"),
        model.start().rows().stream().map(StartModel.Placed::dish).toList());
    enter(ids.get(0), "9");
    assertEquals("9", model.start().rows().get(2).dish());
    model.start().remove(model.start().rows().get(2));
    assertEquals(2, model.start().rows().size());
  }

  @Test
  void an_oven_out_of_range_or_a_word_for_a_number_starts_no_clock() {
    model.begin();
    enter(ids.get(0), "1");
    model.start().gauge().temperature.set("98");
    model.start().start();
    assertTrue(newest().what().contains("98 °C"), newest().what());
    model.start().gauge().temperature.set("hot");
    model.start().start();
    assertTrue(newest().what().contains("is no number"), newest().what());
    assertEquals(Status.RECEIVED, status(ids.get(0)));
    assertEquals(1, model.start().rows().size());
  }

  @Test
  void taking_out_too_early_is_refused_with_the_minutes_left() {
    startTwo();
    desk.clock().advance(Duration.ofMinutes(20));
    model.cycle().end();
    assertTrue(newest().what().contains("40 min are left"), newest().what());
    assertEquals(2, model.cycle().dishes().size());
    desk.clock().advance(Duration.ofMinutes(41));
    model.cycle().end();
    assertEquals(DryingModel.Side.NONE, model.side().get());
    DryingModel.InDesiccator load =
        assertInstanceOf(DryingModel.InDesiccator.class, model.items().get(0));
    assertEquals(2, load.load().dishes().size());
  }

  @Test
  void a_filter_asked_for_before_it_has_cooled_is_refused_with_the_time_left() {
    startTwo();
    desk.clock().advance(Duration.ofMinutes(61));
    model.cycle().end();
    enter(ids.get(0));
    assertEquals(Notice.Level.REFUSED, newest().level());
    assertTrue(newest().what().matches(".*still cooling: \\d+ min are left\\."), newest().what());
    Desiccator.Cooling load = ((DryingModel.InDesiccator) model.items().get(0)).load();
    desk.clock().advance(Duration.between(load.out(), load.cooledUntil()));
    enter(ids.get(0));
    assertTrue(newest().what().contains("has cooled"), newest().what());
    desk.clock().advance(Duration.between(load.out(), load.usefulUntil()));
    enter(ids.get(0));
    assertTrue(newest().what().contains("gone stale"), newest().what());
    model.refresh();
    DryingModel.InDesiccator now = (DryingModel.InDesiccator) model.items().get(0);
    assertEquals(Desiccator.Readiness.STALE, now.load().at(now.now()));
  }

  @Test
  void one_dish_leaves_by_its_number_while_the_rest_stays() {
    startTwo();
    desk.clock().advance(Duration.ofMinutes(61));
    enter("2");
    assertEquals(
        List.of(false, true),
        model.cycle().dishes().stream().map(CycleModel.Dish::leaves).toList());
    model.cycle().end();
    assertEquals(1, model.cycle().dishes().size());
    assertEquals(2, model.items().size());
    assertFalse(model.cycle().dish("77"));
  }

  @Test
  void the_clock_restarts_for_all_in_it_or_with_wet_filters() {
    startTwo();
    desk.clock().advance(Duration.ofMinutes(50));
    model.cycle().restart();
    desk.clock().advance(Duration.ofMinutes(50));
    model.cycle().end();
    assertTrue(newest().what().contains("10 min are left"), newest().what());

    model.join(model.cycle().shown().get().orElseThrow().plan());
    enter(ids.get(3), "3");
    model.start().start();
    assertEquals(3, model.cycle().dishes().size());
    desk.clock().advance(Duration.ofMinutes(30));
    model.cycle().end();
    assertTrue(newest().what().contains("30 min are left"), newest().what());
    assertEquals(1, model.items().size());
  }

  @Test
  void the_card_for_the_door_is_drawn_into_the_papers() throws Exception {
    startTwo();
    model.cycle().card();
    assertTrue(newest().what().contains("oven-"), newest().what());
    try (var files = Files.list(folder.resolve("papers"))) {
      Path card = files.findFirst().orElseThrow();
      assertTrue(
          Files.readString(card, java.nio.charset.StandardCharsets.ISO_8859_1).startsWith("%PDF"));
    }
  }
}
