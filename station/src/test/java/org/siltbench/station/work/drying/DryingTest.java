package org.siltbench.station.work.drying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.Problem;
import org.siltbench.station.life.Status;
import org.siltbench.station.life.TestLab;
import org.siltbench.station.work.method.MethodBook;

class DryingTest {

  private static final Heat RIGHT = new Heat(new BigDecimal("104"), "T1");

  @TempDir Path folder;
  private TestLab lab;
  private MethodBook methods;
  private List<String> ids;

  @BeforeEach
  void open() {
    lab = new TestLab(folder.resolve("lab"), 5);
    methods = MethodBook.of(folder);
    ids = lab.batch("sm-2540d-22", "sample", "sample", "method-blank");
    for (String id : ids) {
      lab.pre(id, "0.11234");
    }
    for (String id : ids.subList(0, 2)) {
      lab.write("sample.received", "filter", id, "sample", id, "volume_ml", "250");
    }
  }

  @AfterEach
  void close() {
    lab.close();
  }

  private Map<String, String> dishes(String... idAndDish) {
    Map<String, String> out = new LinkedHashMap<>();
    for (int i = 0; i < idAndDish.length; i += 2) {
      out.put(idAndDish[i], idAndDish[i + 1]);
    }
    return out;
  }

  private DryStart.Started start(Map<String, String> dishes, Heat heat) {
    return new DryStart(dishes, Purpose.POST, heat, null, "", false).record(lab.bench(), methods);
  }

  private DryEnd.Ended end() {
    return new DryEnd("", Set.of(), RIGHT, null).record(lab.bench(), methods);
  }

  @Test
  void a_cycle_takes_its_time_and_says_when_to_weigh() {
    DryStart.Started started = start(dishes(ids.get(0), "1", ids.get(2), "2"), RIGHT);
    assertEquals(Status.DRYING, lab.state(ids.get(0)).status());
    assertEquals("1", lab.state(ids.get(0)).lastStay().orElseThrow().dish());
    Problem.Refused early = assertThrows(Problem.Refused.class, this::end);
    assertTrue(early.what().contains("60 min"), early.what());
    lab.clock().advance(Duration.ofMinutes(61));
    DryEnd.Ended ended = end();
    var drying = methods.get("sm-2540d-22").drying();
    assertEquals(
        drying.coolMinutes(), Duration.between(ended.out(), ended.cooledUntil()).toMinutes());
    assertEquals(
        drying.usefulMinutes(), Duration.between(ended.out(), ended.usefulUntil()).toMinutes());
    assertEquals(started.cycle().id(), ended.cycle());
  }

  @Test
  void an_oven_out_of_range_starts_no_clock() {
    Heat cold = new Heat(new BigDecimal("98"), "T1");
    Problem.Refused no =
        assertThrows(Problem.Refused.class, () -> start(dishes(ids.get(0), "1"), cold));
    assertTrue(no.what().contains("98 °C") && no.what().contains("103 to 105"), no.what());
    assertEquals(Status.RECEIVED, lab.state(ids.get(0)).status());
  }

  @Test
  void wet_filters_are_refused_in_a_running_cycle_or_restart_its_clock() {
    DryStart.Started first = start(dishes(ids.get(0), "1"), RIGHT);
    lab.clock().advance(Duration.ofMinutes(40));
    String cycle = first.cycle().id();
    DryStart join = new DryStart(dishes(ids.get(1), "2"), Purpose.POST, RIGHT, null, cycle, false);
    assertThrows(Problem.Refused.class, () -> join.record(lab.bench(), methods));
    new DryStart(dishes(ids.get(1), "2"), Purpose.POST, RIGHT, null, cycle, true)
        .record(lab.bench(), methods);
    lab.clock().advance(Duration.ofMinutes(30));
    assertThrows(Problem.Refused.class, this::end);
    lab.clock().advance(Duration.ofMinutes(31));
    assertEquals(2, end().filters().size());
  }

  @Test
  void two_filters_never_share_a_dish_and_no_filter_is_in_two_cycles() {
    Problem.Refused shared =
        assertThrows(
            Problem.Refused.class, () -> start(dishes(ids.get(0), "1", ids.get(1), "1"), RIGHT));
    assertTrue(shared.what().contains("Dish 1"), shared.what());
    start(dishes(ids.get(0), "1"), RIGHT);
    assertThrows(Problem.Refused.class, () -> start(dishes(ids.get(0), "2"), RIGHT));
  }

  @Test
  void a_filter_that_has_not_come_back_is_refused() {
    List<String> other = new ArrayList<>(ids);
    lab.write("filter.rejected", "filter", other.get(1), "reason", "torn");
    assertThrows(Problem.Refused.class, () -> start(dishes(other.get(1), "1"), RIGHT));
  }

  @Test
  void one_load_leaves_while_the_rest_stays_in() {
    start(dishes(ids.get(0), "1", ids.get(1), "2"), RIGHT);
    lab.clock().advance(Duration.ofMinutes(61));
    new DryEnd("", Set.of(ids.get(0)), RIGHT, null).record(lab.bench(), methods);
    assertTrue(lab.state(ids.get(0)).openStay().isEmpty());
    assertTrue(lab.state(ids.get(1)).openStay().isPresent());
    assertEquals(List.of(ids.get(1)), end().filters());
  }

  @Test
  void a_day_of_sixty_filters_is_planned_in_loads_that_do_not_go_stale() {
    List<String> many = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      many.add("F" + i);
    }
    OffsetDateTime out = OffsetDateTime.of(2026, 5, 14, 10, 0, 0, 0, ZoneOffset.UTC);
    Times times = new Times(Duration.ofHours(1), Duration.ofMinutes(30), Duration.ofHours(2));
    List<Load> loads = Load.plan(many, out, times);
    assertEquals(60, loads.stream().mapToInt(load -> load.filters().size()).sum());
    OffsetDateTime free = loads.get(0).cooledUntil();
    for (Load load : loads) {
      assertTrue(load.filters().size() <= Load.MOST);
      OffsetDateTime begin = load.cooledUntil().isAfter(free) ? load.cooledUntil() : free;
      OffsetDateTime done = begin.plus(Load.PER_WEIGHING.multipliedBy(load.filters().size()));
      assertTrue(!done.isAfter(load.usefulUntil()), "load " + load.number() + " goes stale");
      free = done;
    }
  }

  @Test
  void times_that_were_stated_stay_marked_as_stated() {
    OffsetDateTime in = OffsetDateTime.now(lab.clock()).minusHours(3);
    new DryStart(dishes(ids.get(0), "1"), Purpose.POST, RIGHT, in, "", false)
        .record(lab.bench(), methods);
    new DryEnd("", Set.of(), RIGHT, in.plusHours(1)).record(lab.bench(), methods);
    assertTrue(!lab.state(ids.get(0)).lastStay().orElseThrow().observed());
  }
}
