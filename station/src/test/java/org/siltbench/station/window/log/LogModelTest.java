package org.siltbench.station.window.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.siltbench.station.life.FilterState;
import org.siltbench.station.life.Filters;
import org.siltbench.station.life.Status;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.window.TestDesk;
import org.siltbench.station.window.desk.Entered;
import org.siltbench.station.window.desk.Notice;
import org.siltbench.station.window.log.AmendModel.Step;
import org.siltbench.station.work.log.EntryList;
import org.siltbench.station.work.results.Impact;

/** The log and its corrections without a screen. */
class LogModelTest {

  @TempDir Path folder;
  private TestDesk desk;
  private LogModel model;
  private List<String> ids;

  @BeforeEach
  void open() {
    desk = new TestDesk(folder);
    ids = desk.batch("storm", "sm-2540d-22", "sample", "sample");
    ids.forEach(id -> desk.pre(id, "0.11234"));
    loaded(ids.get(0), "S1", "250", "0.14334");
    loaded(ids.get(1), "S2", "200", "0.12234");
    model = new LogModel(desk.desk());
    desk.desk().go("log");
    model.refresh();
  }

  private void loaded(String id, String sample, String volume, String grams) {
    desk.write(
        "sample.received",
        "filter",
        id,
        "sample",
        sample,
        "role",
        "sample",
        "site",
        "A",
        "volume_ml",
        volume);
    desk.write(
        "dry.started",
        "cycle",
        "C" + sample,
        "purpose",
        "post",
        "filters",
        List.of(Map.of("filter", id, "dish", "1")));
    desk.write("dry.ended", "cycle", "C" + sample, "filters", List.of(id));
    desk.write(
        "weighing",
        "filter",
        id,
        "status",
        "post",
        "round",
        1L,
        "cycle",
        "C" + sample,
        "mass_g",
        grams,
        "verdict",
        "constant");
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private EntryList.Shown entry(String kind, String filter) {
    return model.entries().stream()
        .filter(one -> one.entry().kind().equals(kind) && one.text("filter").equals(filter))
        .findFirst()
        .orElseThrow();
  }

  private Notice newest() {
    return desk.desk().notices().list().get(0);
  }

  private FilterState state(String id) {
    return Filters.require(desk.desk().lab().register(), id);
  }

  @Test
  void every_entry_of_a_batch_can_be_read_and_a_scan_narrows_it() {
    assertEquals(11, model.entries().size());
    assertEquals("weighing", model.entries().get(0).entry().kind());
    Entered.take(desk.desk(), model, ids.get(0));
    assertEquals(6, model.entries().size());
    model.all();
    assertEquals(11, model.entries().size());
    assertEquals(
        "Into the oven", new EntryWords(desk.desk().texts(LogModel.class)).kind("dry.started"));
  }

  @Test
  void what_a_correction_changes_is_shown_before_and_after_and_the_old_value_stays_struck() {
    model.choose(entry("sample.received", ids.get(0)));
    CorrectModel correct = model.correction();
    correct.pick("volume_ml");
    assertEquals("250", correct.value.get());
    correct.value.set("500");
    correct.amend().reason.set("misread");
    correct.look();
    List<Impact.Change> ahead = correct.amend().state().get().changes();
    assertEquals(Step.LOOKED, correct.amend().state().get().step());
    assertEquals(1, ahead.size());
    assertEquals("S1", ahead.get(0).sample());
    assertEquals("250", state(ids.get(0)).record().orElseThrow().text("volume_ml"));

    correct.amend().act();
    assertEquals(Step.DONE, correct.amend().state().get().step());
    assertEquals(ahead, correct.amend().state().get().changes());
    EntryList.Field volume =
        entry("sample.received", ids.get(0)).fields().stream()
            .filter(field -> field.name().equals("volume_ml"))
            .findFirst()
            .orElseThrow();
    assertEquals("500", volume.value());
    assertEquals(List.of("250"), volume.struck());
    assertTrue(entry("sample.received", ids.get(0)).corrected());
    assertTrue(model.entries().stream().anyMatch(e -> e.entry().kind().equals("corrected")));
  }

  @Test
  void nothing_is_done_that_was_not_looked_at_as_it_is_typed() {
    model.choose(entry("sample.received", ids.get(0)));
    CorrectModel correct = model.correction();
    correct.pick("site");
    correct.value.set("B");
    correct.amend().act();
    assertTrue(newest().what().contains("not been looked at"), newest().what());
    correct.look();
    assertEquals(Notice.Level.REFUSED, newest().level());
    correct.amend().reason.set("wrong site");
    correct.look();
    correct.value.set("C");
    assertEquals(Step.TYPED, correct.amend().state().get().step());
    correct.amend().act();
    assertEquals("A", state(ids.get(0)).record().orElseThrow().text("site"));
  }

  @Test
  void two_filters_are_swapped_in_one_act_with_both_results_listed_before() {
    model.part().set(LogModel.Part.SWAP);
    Entered.take(desk.desk(), model, ids.get(0));
    Entered.take(desk.desk(), model, ids.get(1));
    SwapModel swap = model.swapping();
    assertEquals(ids.get(1), swap.second.get());
    swap.amend().reason.set("bags exchanged at the oven");
    swap.look();
    List<Impact.Change> ahead = swap.amend().state().get().changes();
    assertEquals(2, ahead.size());
    assertEquals("0.14334", state(ids.get(0)).postMass().orElseThrow().digits());
    swap.amend().act();
    assertEquals("0.12234", state(ids.get(0)).postMass().orElseThrow().digits());
    assertEquals(ahead, swap.amend().state().get().changes());
    swap.second.set("K3DF0712R");
    swap.amend().reason.set("x");
    swap.look();
    assertEquals(Notice.Level.REFUSED, newest().level());
  }

  @Test
  void an_entry_is_taken_back_a_filter_rejected_a_hold_lifted() {
    model.choose(entry("weighing", ids.get(0)));
    model.correction().amend().reason.set("door was open");
    model.correction().lookTakenBack();
    assertEquals(1, model.correction().amend().state().get().changes().size());
    model.correction().amend().act();
    assertTrue(entry("weighing", ids.get(0)).voided());

    FilterModel judge = model.judging();
    judge.filter.set(ids.get(1));
    judge.act.set("hold");
    judge.amend().reason.set("looks odd");
    judge.look();
    judge.amend().act();
    assertEquals(1, state(ids.get(1)).holds().size());
    judge.act.set("lift");
    judge.amend().reason.set("checked");
    judge.look();
    judge.amend().act();
    assertEquals(0, state(ids.get(1)).holds().size());
    judge.act.set("reject");
    judge.amend().reason.set("torn");
    judge.look();
    assertEquals(1, judge.amend().state().get().changes().size());
    judge.amend().act();
    assertEquals(Status.REJECTED, state(ids.get(1)).status());
  }

  @Test
  void rejecting_asks_for_a_supervisor() {
    desk.desk().signOn().on(new Person("CD", Right.WEIGH));
    FilterModel judge = model.judging();
    judge.filter.set(ids.get(1));
    judge.amend().reason.set("torn");
    judge.look();
    judge.amend().act();
    assertTrue(newest().what().contains("right to supervise"), newest().what());
    assertFalse(state(ids.get(1)).status() == Status.REJECTED);
  }

  @Test
  void the_ledger_is_proved_and_a_changed_line_is_found() throws Exception {
    model.prove().verify();
    assertTrue(model.prove().report().get().orElseThrow().ok());
    model.prove().sheet();
    assertTrue(newest().what().contains("log-"), newest().what());
    model.prove().paper.set("no hash");
    model.prove().verify();
    assertTrue(newest().what().contains("is not a printed hash"), newest().what());
    model.prove().paper.set("");
    Path ledger = folder.resolve("ledger").resolve(desk.desk().lab().code() + ".jsonl");
    String text = Files.readString(ledger).replace("0.14334", "0.14335");
    Files.writeString(ledger, text, StandardOpenOption.TRUNCATE_EXISTING);
    model.prove().verify();
    assertFalse(model.prove().report().get().orElseThrow().ok());
  }
}
