package org.siltbench.station.window;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.siltbench.station.ledger.Entry;
import org.siltbench.station.life.VerdictRule;
import org.siltbench.station.people.Person;
import org.siltbench.station.people.Right;
import org.siltbench.station.work.Facts;
import org.siltbench.station.work.correct.Correction;

/**
 * A batch of the invented storm, weighed, filtered and weighed back, so that its results, quality
 * and release have something to show: two sites, a pair, blanks, one clear water, one not constant.
 */
public final class StormLab {

  public static final String METHOD = "sm-2540d-22";

  private static final String[] ROLES = {
    "sample",
    "sample",
    "sample",
    "sample",
    "sample",
    "sample",
    "sample",
    "sample",
    "sample",
    "sample",
    "field-blank",
    "method-blank",
    "spare"
  };

  /** Residues, mg; concentrations follow from 250 mL. */
  private static final double[] RESIDUES = {
    3.1, 11.8, 28.4, 41.9, 24.6, 9.7, 6.2, 17.5, 22.9, 10.2, 0.04, -0.06
  };

  private final TestDesk desk;
  private final List<Entry> notes = new ArrayList<>();
  private final List<String> ids;
  private final String batch;

  public StormLab(TestDesk desk) {
    this.desk = desk;
    for (int i = 0; i < 11; i++) {
      check(i % 4 == 3 ? "-0.06" : "0.0" + (1 + i % 5), true);
      desk.clock().advance(Duration.ofHours(20));
    }
    check("0.02", true);
    ids = desk.batch("storm of 12 May", METHOD, ROLES);
    batch = ids.get(0).substring(0, 6);
    for (String id : ids) {
      weigh(id, "pre", grams(0), "");
    }
    for (int i = 0; i < 10; i++) {
      receive(i);
    }
    desk.write(
        "sample.received",
        "filter",
        ids.get(10),
        "sample",
        "FB1",
        "role",
        "field-blank",
        "filter_order",
        "1",
        "site",
        "ford",
        "volume_ml",
        "250",
        "taken",
        "aliquot");
    cycle("D1", 0.05);
    check("0.03", true);
    cycle("D2", 0);
    desk.desk().signOn().on(new Person("AB", Right.SUPERVISE));
  }

  /** Filter IDs in the order of the roles. */
  public List<String> ids() {
    return ids;
  }

  private static String grams(double residueMg) {
    return String.format(java.util.Locale.ROOT, "%.5f", 0.11234 + residueMg / 1000);
  }

  /** A check weight on the pan. */
  public void check(String errorMg, boolean pass) {
    desk.write(
        "check.weighed",
        "balance",
        "practice",
        "weight",
        "100mg",
        "phase",
        "opening",
        "pass",
        pass,
        "error_mg",
        errorMg,
        "limit_mg",
        "0.3",
        "nominal_g",
        "0.1",
        "certified_g",
        "0.1",
        "certificate",
        false,
        "reading_g",
        grams(0).replace("0.11234", "0.10001"));
  }

  private void weigh(String id, String status, String grams, String cycle) {
    desk.write(
        "weighing",
        "filter",
        id,
        "status",
        status,
        "round",
        1L,
        "mass_g",
        grams,
        "resolution_g",
        "0.00001",
        "u_g",
        "0.000003",
        "balance",
        "practice",
        "cycle",
        cycle,
        "purpose",
        "result",
        "keyed",
        false,
        "observed",
        true,
        "raw",
        List.of("0 " + grams + " g"),
        "rule",
        VerdictRule.data(desk.desk().methods().get(METHOD).constancy()));
  }

  private void receive(int i) {
    boolean lower = i >= 6 && i < 9;
    boolean twin = i == 9;
    String minute = String.format("2026-05-12T%02d:%02dZ", 10 + (twin ? 5 : i) / 2, i % 2 * 30);
    notes.add(
        desk.write(
            "sample.received",
            "filter",
            ids.get(i),
            "sample",
            twin ? "S06-D" : "S0" + (i + 1),
            "role",
            "sample",
            "filter_order",
            "1",
            "site",
            lower ? "ford" : "footbridge",
            "collected",
            minute,
            "volume_ml",
            "250",
            "volume_u_ml",
            "9",
            "taken",
            "aliquot",
            "condition",
            i == 2 ? "debris-removed" : "ok",
            "pair",
            i == 5 || twin ? "P1" : "",
            "pair_kind",
            i == 5 || twin ? "field-replicate" : ""));
  }

  private void cycle(String cycle, double moreMg) {
    List<Map<String, String>> dishes = new ArrayList<>();
    List<String> all = ids.subList(0, RESIDUES.length);
    for (String id : all) {
      Map<String, String> dish = new LinkedHashMap<>();
      dish.put("filter", id);
      dish.put("dish", Integer.toString(dishes.size() + 1));
      dishes.add(dish);
    }
    desk.write(
        "dry.started", "cycle", cycle, "filters", dishes, "purpose", "post", "in", time(-90));
    desk.write(
        "dry.ended",
        "cycle",
        cycle,
        "filters",
        all,
        "out",
        time(-30),
        "cooled_until",
        time(-1),
        "useful_until",
        time(180));
    for (int i = 0; i < all.size(); i++) {
      double more = i == 4 ? 40 * moreMg : moreMg;
      weigh(all.get(i), "post", grams(RESIDUES[i] + more), cycle);
    }
  }

  private String time(int minutes) {
    return Facts.time(OffsetDateTime.now(desk.clock()).plusMinutes(minutes));
  }

  /** A volume of the field notes is corrected. */
  public void correctVolume(int filter, String millilitres) {
    new Correction(notes.get(filter).ref(), Map.of("volume_ml", millilitres), "Read off wrongly.")
        .record(desk.desk().lab());
    desk.desk().changed();
  }

  /** The batch's code. */
  public String batch() {
    return batch;
  }
}
