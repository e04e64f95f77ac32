package org.siltbench.station.window.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.BatchState;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Role;
import org.siltbench.station.life.Status;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.prepare.PrepareModel.Part;

/** Everything before the trip, without a screen. */
class PrepareModelTest {

  @TempDir Path folder;
  private TestDesk desk;
  private PrepareModel model;

  @BeforeEach
  void open() {
    desk = new TestDesk(folder);
    model = new PrepareModel(desk.desk());
    desk.desk().go("prepare");
    model.refresh();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private Notice newest() {
    return desk.desk().notices().list().get(0);
  }

  private FilterState state(String id) {
    return Filters.require(desk.desk().lab().register(), id);
  }

  private BatchState weighedBatch() {
    List<String> ids = desk.batch("storm", "sm-2540d-22", "sample", "sample", "sample", "control");
    ids.forEach(id -> desk.pre(id, "0.11234"));
    model.refresh();
    return model.chosen().get().orElseThrow();
  }

  private static List<String> ids(BatchState batch) {
    return List.copyOf(batch.filters().keySet());
  }

  @Test
  void the_plan_counts_the_filters_and_fills_the_batch() {
    PlanModel plan = model.plan();
    plan.field("every").set("30m");
    plan.field("length").set("6h");
    plan.field("sites").set("2");
    plan.count();
    var counted = plan.plan().get().orElseThrow();
    assertEquals(13, counted.samplesPerSite());
    assertEquals(26, counted.samples());
    assertEquals("", counted.advice().english());
    assertEquals(Integer.toString(counted.total()), plan.field("count").get());

    plan.field("lowest").set("20");
    plan.field("highest").set("800");
    plan.count();
    assertFalse(plan.plan().get().orElseThrow().advice().isEmpty());

    plan.field("name").set("Alder Fork storm");
    plan.lot.set("L7");
    plan.make();
    assertTrue(newest().what().contains("known by name only"), newest().what());
    BatchState batch = model.chosen().get().orElseThrow();
    assertEquals("Alder Fork storm", batch.name());
    assertEquals(counted.total(), batch.filters().size());
    assertEquals(
        counted.of(Role.SPARE),
        (int) batch.filters().values().stream().filter("spare"::equals).count());
  }

  @Test
  void a_plan_that_makes_no_sense_is_refused_with_the_field() {
    model.plan().field("sites").set("two");
    model.plan().count();
    assertTrue(newest().what().startsWith("Sites"), newest().what());
    model.plan().field("sites").set("1");
    model.plan().field("every").set("often");
    model.plan().count();
    assertEquals(Notice.Level.REFUSED, newest().level());
    assertTrue(model.plan().plan().get().isEmpty());
  }

  @Test
  void a_lot_is_described_and_its_blank_loss_judged() {
    LotModel lot = model.lot();
    lot.field("lot.name").set("GF-12");
    lot.field("diameter").set("47");
    lot.field("window").set("0,085..0,125");
    lot.describe();
    assertEquals("0.085..0.125", lot.lots().get(0).window());
    lot.tested.set("GF-12");
    lot.field("losses").set("0,12 0,05 -0,02");
    lot.test();
    assertTrue(newest().what().contains("passed"), newest().what());
    assertEquals("passed", lot.lots().get(0).lot().verdict());
    lot.field("losses").set("0.9; 0.8");
    lot.test();
    assertTrue(newest().what().contains("failed"), newest().what());
    lot.field("lot.name").set("GF-12");
    lot.describe();
    assertEquals(Notice.Level.REFUSED, newest().level());
  }

  @Test
  void labels_and_field_sheet_go_into_the_papers_and_are_recorded() throws Exception {
    BatchState batch = weighedBatch();
    model.papers().labelFile();
    assertTrue(newest().what().contains("labels-" + batch.code()), newest().what());
    assertEquals(1, state(ids(batch).get(0)).labelRevision());
    model.papers().labelFile();
    assertTrue(newest().what().contains("no filter whose label is due"), newest().what());
    model.papers().sheetFile();
    Path table = folder.resolve("papers").resolve("field-" + batch.code() + ".csv");
    assertTrue(Files.readString(table).startsWith("filter,"));
    model.papers().sheetQueue.set("no-such-queue");
    model.papers().sheetPrint();
    assertEquals(Notice.Level.TROUBLE, newest().level());
  }

  @Test
  void bags_go_out_and_come_back() {
    BatchState batch = weighedBatch();
    model.part().set(Part.TRIP);
    TripModel trip = model.trip();
    trip.trip.set("Alder Fork, May");
    Entered.take(desk.desk(), model, ids(batch).get(0));
    assertEquals(List.of(ids(batch).get(0)), trip.scanned());
    trip.issue();
    assertEquals(Status.ISSUED, state(ids(batch).get(0)).status());
    assertEquals(Status.PRE_WEIGHED, state(ids(batch).get(1)).status());
    trip.issue();
    assertEquals("2 bags are out on “Alder Fork, May”.", newest().what());
    assertEquals(Status.PRE_WEIGHED, state(ids(batch).get(3)).status());
    trip.back();
    assertEquals(Status.PRE_WEIGHED, state(ids(batch).get(0)).status());
    trip.trip.set("");
    trip.issue();
    assertEquals(Notice.Level.REFUSED, newest().level());
  }

  @Test
  void an_audit_names_one_bag_in_ten_and_needs_a_balance() {
    BatchState batch = weighedBatch();
    model.audit().propose();
    assertEquals(1, model.audit().ids().size());
    model.part().set(Part.AUDIT);
    Entered.take(desk.desk(), model, ids(batch).get(0));
    assertEquals(2, model.audit().ids().size());
    model.audit().start();
    assertTrue(newest().what().contains("No balance"), newest().what());
  }

  @Test
  void a_scanned_bag_brings_its_batch_in_front() {
    BatchState first = weighedBatch();
    desk.batch("second", "sm-2540d-22", "sample");
    model.refresh();
    model.choose(model.batches().get(0).batch());
    Entered.take(desk.desk(), model, ids(first).get(0));
    assertEquals("storm", model.chosen().get().orElseThrow().name());
  }
}
